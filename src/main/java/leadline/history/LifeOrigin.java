package leadline.history;

import leadline.fleet.Written;

/** From what a life's age is counted. */
public enum LifeOrigin implements Written {
  /** The item was known new. */
  NEW,
  RENEWED,
  HOURS_SINCE_NEW,
  /**
   * Dated by its hours since new, of a part that may fail unseen, to well before it was first on
   * record: earlier openings may have let only the sound go on, so that the life has no age.
   */
  BEFORE_RECORDS,
  UNKNOWN
}
