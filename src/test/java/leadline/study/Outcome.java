package leadline.study;

/** What became of a planted error. */
enum Outcome {
  /** A figure is used that is the true one. */
  REPAIRED_RIGHTLY,
  /** A figure is used that is neither the one written nor the true one. */
  REPAIRED_WRONGLY,
  /** Named in a question, a note or a refusal, and not used or used as it stands. */
  ASKED,
  /** Not named; the true hours lie within the bounds of those used, give or take 24 h. */
  HARMLESS,
  /** Not named, and further from the truth, or not to be measured in hours. */
  UNNOTICED
}
