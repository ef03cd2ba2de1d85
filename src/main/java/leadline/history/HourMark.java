package leadline.history;

import java.time.Instant;
import leadline.quantity.RunningHours;

/**
 * A trusted reading on the never-falling series.
 *
 * @param hours the machine's hours on the series
 * @param slack how far below and above {@code hours} they may have been: nothing but where the
 *     reading was mended
 * @param doubt what of the series up to here is not simply counted
 * @param offset what is added to a reading of the counter in force to give {@code hours}
 * @param step how the hours came about since the mark before
 */
record HourMark(
    Instant at, RunningHours hours, Slack slack, Doubt doubt, RunningHours offset, Step step) {

  enum Step {
    COUNTED,
    ROLLED_OVER,
    /** Read after a slip that one figure alone explains, or following such a reading. */
    MENDED,
    /** The counter was changed and its last reading not recorded. */
    UNRECORDED
  }

  record Slack(RunningHours below, RunningHours above) {
    static final Slack NONE = new Slack(RunningHours.ZERO, RunningHours.ZERO);
  }

  /**
   * Sums along the series.
   *
   * @param repaired hours that rest on a repaired reading
   * @param interpolated hours of stretches of more than {@link HourSpan#LONGEST_PLAIN}
   * @param unseen hours that may have been run besides, of which no reading tells
   * @param unsure counted hours that may not have been run at all
   */
  record Doubt(
      RunningHours repaired, RunningHours interpolated, RunningHours unseen, RunningHours unsure) {
    static final Doubt NONE =
        new Doubt(RunningHours.ZERO, RunningHours.ZERO, RunningHours.ZERO, RunningHours.ZERO);

    Doubt repaired(RunningHours more) {
      return new Doubt(repaired.plus(more), interpolated, unseen, unsure);
    }

    Doubt interpolated(RunningHours more) {
      return new Doubt(repaired, interpolated.plus(more), unseen, unsure);
    }

    Doubt unseen(RunningHours more) {
      return new Doubt(repaired, interpolated, unseen.plus(more), unsure);
    }

    Doubt unsure(RunningHours more) {
      return new Doubt(repaired, interpolated, unseen, unsure.plus(more));
    }
  }

  /** A mark of which nothing but the increment is known since this one. */
  HourMark then(
      Instant later, RunningHours increment, Doubt sum, RunningHours newOffset, Step how) {
    return new HourMark(later, hours.plus(increment), Slack.NONE, sum, newOffset, how);
  }

  RunningHours least() {
    return hours.minus(slack.below());
  }

  RunningHours most() {
    return hours.plus(slack.above());
  }
}
