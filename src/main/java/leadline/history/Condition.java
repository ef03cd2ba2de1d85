package leadline.history;

/** What a found condition means for the part's function. */
public enum Condition {
  WORKING,
  /** Still working, but in a condition that, renewed, counts as rejected. */
  BEYOND_LIMIT,
  FAILED,
  /** The part was not there: a question about assembly. */
  MISSING
}
