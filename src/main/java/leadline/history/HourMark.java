package leadline.history;

import java.time.Instant;
import leadline.quantity.RunningHours;

/**
 * A trusted reading on the never-falling series.
 *
 * @param hours the machine's hours on the series
 * @param repaired how many hours of the series up to here rest on a repaired reading
 * @param offset what is added to a reading of the counter in force to give {@code hours}
 * @param step how the hours came about since the mark before
 */
record HourMark(
    Instant at, RunningHours hours, RunningHours repaired, RunningHours offset, Step step) {

  enum Step {
    COUNTED,
    ROLLED_OVER,
    /** The counter was changed and its last reading not recorded. */
    UNRECORDED
  }
}
