package leadline.history;

import leadline.fleet.Written;

/** From what a life's age is counted. */
public enum LifeOrigin implements Written {
  /** The item was known new. */
  NEW,
  RENEWED,
  HOURS_SINCE_NEW,
  UNKNOWN
}
