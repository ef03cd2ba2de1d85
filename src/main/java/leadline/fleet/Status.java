package leadline.fleet;

/** Whether a record stands. A cancelled record is withdrawn by the ship. */
public enum Status implements Written {
  CANCELLED
}
