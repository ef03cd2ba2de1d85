package leadline.history;

import java.math.BigInteger;
import java.time.Duration;
import java.time.Instant;
import leadline.history.HourSeries.Bounded;
import leadline.quantity.RunningHours;

/** The stretch from one trusted reading to the next, or to itself. */
record HourSpan(HourMark from, HourMark to) {

  /**
   * A month, and the days by which the end of one may be read late (common practice, no source).
   */
  static final Duration LONGEST_PLAIN = Duration.ofDays(45);

  /** The hours at a moment of the span, with the least and the most that they can have been. */
  Bounded at(Instant moment) {
    RunningHours hours = interpolated(from.hours(), to.hours(), moment);
    return new Bounded(hours, least(moment).min(hours), most(moment).max(hours));
  }

  /** Repaired hours up to a moment of the span, which has its share of those of the span. */
  RunningHours repairedAt(Instant moment) {
    return interpolated(from.doubt().repaired(), to.doubt().repaired(), moment);
  }

  RunningHours interpolatedAt(Instant moment) {
    return interpolated(from.doubt().interpolated(), to.doubt().interpolated(), moment);
  }

  RunningHours unseenAt(Instant moment) {
    return interpolated(from.doubt().unseen(), to.doubt().unseen(), moment);
  }

  RunningHours unsureAt(Instant moment) {
    return interpolated(from.doubt().unsure(), to.doubt().unsure(), moment);
  }

  private RunningHours least(Instant moment) {
    return switch (to.step()) {
      case COUNTED, ROLLED_OVER, MENDED ->
          from.least().max(to.least().minus(RunningHours.elapsedBetween(moment, to.at())));
      case UNRECORDED -> from.least();
    };
  }

  private RunningHours most(Instant moment) {
    RunningHours withoutAPause = from.most().plus(RunningHours.elapsedBetween(from.at(), moment));
    return switch (to.step()) {
      case COUNTED, ROLLED_OVER, MENDED -> to.most().min(withoutAPause);
      case UNRECORDED -> moment.equals(to.at()) ? to.most() : withoutAPause;
    };
  }

  /** Rounded half up to a tenth. */
  private RunningHours interpolated(RunningHours first, RunningHours last, Instant moment) {
    long whole = Duration.between(from.at(), to.at()).toSeconds();
    if (whole == 0) {
      return first;
    }
    long part = Duration.between(from.at(), moment).toSeconds();
    BigInteger twice =
        BigInteger.valueOf(last.minus(first).tenths())
            .multiply(BigInteger.valueOf(2 * part))
            .add(BigInteger.valueOf(whole));
    return first.plus(
        RunningHours.ofTenths(twice.divide(BigInteger.valueOf(2 * whole)).longValueExact()));
  }
}
