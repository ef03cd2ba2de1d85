package leadline.fleet;

/** What a row of a return sheet is for. */
public enum ReturnedRow implements Written {
  /** A question about a record. */
  QUESTION,
  /** An overhaul that falls due, or a part of it. */
  DUE_OVERHAUL
}
