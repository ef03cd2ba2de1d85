package leadline.fleet;

/** What was done to a part. */
public enum Action implements Written {
  NONE,
  CLEANED,
  LAPPED,
  ADJUSTED,
  RENEWED
}
