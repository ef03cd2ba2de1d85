package leadline.fleet;

/** A ship's answer about a record, beside the cells that it fills in. */
public enum Answer implements Written {
  /** The record is right as it stands. */
  AS_WRITTEN,
  /** The cells filled in take the place of the record's. */
  CORRECTED,
  /** The record is withdrawn. */
  CANCELLED
}
