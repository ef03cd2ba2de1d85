package leadline.history;

import java.time.Instant;
import java.util.Optional;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/** A machine's hours as one series that never falls. */
public interface HourSeries {

  /** The hours at a moment; none before the first and after the last trusted reading. */
  Optional<Bounded> at(Instant moment);

  /** Hours run in a period, as far as it lies between the first and the last trusted reading. */
  Exposure exposure(Period period);

  /**
   * Hours at a moment, with the least and the most that they can have been: a machine turns 0 to 24
   * hours a day. At a trusted reading all three are the same.
   */
  public record Bounded(RunningHours hours, RunningHours lower, RunningHours upper) {

    /** Whether a figure lies within the bounds, give or take the tolerance. */
    boolean admits(RunningHours figure, RunningHours tolerance) {
      return !lower.minus(tolerance).isAbove(figure) && !figure.isAbove(upper.plus(tolerance));
    }
  }
}
