package leadline.history;

import leadline.fleet.Written;

/** How a life left the records. */
public enum LifeEnd implements Written {
  FAILED,
  REJECTED,
  /** Verified working, then renewed all the same. */
  RENEWED,
  REPLACED_UNOPENED,
  STILL_FITTED,
  ON_SHELF,
  /** The item left its position without a record. */
  LOST_SIGHT
}
