package leadline.history;

import leadline.fleet.Written;

/** Why a reading is used otherwise than it is written, or not at all. */
public enum HourRule implements Written {
  /** The counter passed its last figure; its range is added. */
  ROLL_OVER,
  /** The counter was changed, as the log says. */
  REPLACED,
  /** The counter was changed, as what follows shows. */
  NEW_COUNTER,
  /** Two neighbouring digits had changed places. */
  TRANSPOSED,
  /** A digit had been left out. */
  DIGIT_LOST,
  /** A digit stood too many. */
  DIGIT_ADDED,
  /** One digit was another. */
  DIGIT_MISREAD,
  /** The point stood one to three places off. */
  TENFOLD,
  /** Left out: the figure before was copied on. */
  STALE,
  /** Left out: it climbs faster than time, as a counter of revolutions does. */
  REVOLUTIONS,
  /** Left out: a counter's reading among hours run, or hours run among readings. */
  MIXED,
  /** Left out: it fits a day or a year earlier or later. */
  ANOTHER_DAY,
  /** Left out: of two readings either can be true, and not both. */
  CONTRADICTED,
  /** Left out: the machine cannot have run so. */
  IMPOSSIBLE,
  /** An overhaul's machine hours lie outside the bounds of the series, which is used. */
  OVERHAUL_HOURS,
  /** They are shifted as those of an earlier overhaul, which is asked about; the series is used. */
  SAME_SHIFT
}
