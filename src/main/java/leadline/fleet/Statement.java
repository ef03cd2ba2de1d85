package leadline.fleet;

/** Whether the ship says that it opened a part. Silence is a third answer, never a yes or a no. */
public enum Statement implements Written {
  YES,
  NO
}
