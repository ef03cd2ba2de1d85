package leadline.stats;

import java.util.OptionalDouble;

/**
 * A duration as far as it was seen, from its start at 0 to its end or to the last look at it. Two
 * times are tied only if their doubles are equal: whole tenths of an hour divided by 10.0 keep
 * every tie.
 *
 * @param <C> what may end it
 */
public sealed interface ObservedTime<C> {

  /** When it ended or was last seen going on, in the caller's unit: finite, 0 or more. */
  double time();

  /**
   * When watching began, if that was after the start: the duration is known only because it lasted
   * beyond this (delayed entry, left truncation). Less than {@link #time()}.
   */
  OptionalDouble entry();

  /**
   * A duration whose end was seen, watched from its start.
   *
   * @throws IllegalArgumentException if the time is not finite, or negative
   */
  static <C> ObservedTime<C> ended(double time, C cause) {
    return new Ended<>(OptionalDouble.empty(), time, cause);
  }

  /**
   * A duration last seen still going on (right-censored), watched from its start.
   *
   * @throws IllegalArgumentException if the time is not finite, or negative
   */
  static <C> ObservedTime<C> censored(double time) {
    return new Censored<>(OptionalDouble.empty(), time);
  }

  /**
   * The same duration, watched only from this time on; from 0 on is from its start.
   *
   * @param entry in the caller's unit
   * @throws IllegalArgumentException if the entry is negative or not before {@link #time()}
   */
  ObservedTime<C> enteredAt(double entry);

  /** Its end was seen, and what ended it. */
  record Ended<C>(OptionalDouble entry, double time, C cause) implements ObservedTime<C> {
    /**
     * @throws IllegalArgumentException if times are not 0 &lt;= entry &lt; time &lt; infinity
     */
    public Ended {
      requireTimes(entry, time);
      entry = afterStart(entry);
    }

    @Override
    public ObservedTime<C> enteredAt(double entry) {
      return new Ended<>(OptionalDouble.of(entry), time, cause);
    }
  }

  /** It was last seen still going on. */
  record Censored<C>(OptionalDouble entry, double time) implements ObservedTime<C> {
    /**
     * @throws IllegalArgumentException if times are not 0 &lt;= entry &lt; time &lt; infinity
     */
    public Censored {
      requireTimes(entry, time);
      entry = afterStart(entry);
    }

    @Override
    public ObservedTime<C> enteredAt(double entry) {
      return new Censored<>(OptionalDouble.of(entry), time);
    }
  }

  /** Entry at the start is no delay: such a duration is at risk at 0 like any other. */
  private static OptionalDouble afterStart(OptionalDouble entry) {
    return entry.orElse(0) > 0 ? entry : OptionalDouble.empty();
  }

  private static void requireTimes(OptionalDouble entry, double time) {
    if (!(time >= 0 && Double.isFinite(time))) {
      throw new IllegalArgumentException("a time must be finite and 0 or more: " + time);
    }
    if (entry.isPresent() && !(entry.getAsDouble() >= 0 && entry.getAsDouble() < time)) {
      throw new IllegalArgumentException(
          "entry must be 0 or more and before " + time + ": " + entry.getAsDouble());
    }
  }
}
