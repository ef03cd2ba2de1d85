package leadline.sample;

import leadline.fleet.Written;

/** How a vessel logs running hours. */
public enum ReadingHabit implements Written {
  /** The counter each noon. */
  DAILY,
  /** The counter at the end of each Sunday. */
  WEEKLY,
  /** The hours run in each month. */
  MONTHLY
}
