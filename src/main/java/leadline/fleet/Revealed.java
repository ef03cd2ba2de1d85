package leadline.fleet;

/** How a failure came to light. */
public enum Revealed implements Written {
  AT_OPENING,
  IN_SERVICE
}
