package leadline.stats;

/**
 * A duration as far as inspections tell: it ended after {@code lower} and not after {@code upper},
 * or exactly at both where they are equal.
 *
 * @param lower when it was last seen going on, in the caller's unit, finite, 0 or more
 * @param upper when it was first known to have ended, at least {@code lower}; positive infinity
 *     where it was last seen going on (right-censored)
 * @param weight how many durations are alike, finite and more than 0
 */
public record ObservedInterval(double lower, double upper, double weight) {

  /**
   * @throws IllegalArgumentException if not 0 &lt;= lower &lt;= upper and lower &lt; infinity, or
   *     the weight is not finite and positive
   */
  public ObservedInterval {
    if (!(lower >= 0 && Double.isFinite(lower) && upper >= lower)) {
      throw new IllegalArgumentException("no interval: " + lower + " to " + upper);
    }
    if (!(weight > 0 && Double.isFinite(weight))) {
      throw new IllegalArgumentException("a weight must be finite and more than 0: " + weight);
    }
    lower += 0.0;
    upper += 0.0;
  }

  /** A duration whose end was seen. */
  public static ObservedInterval at(double time) {
    return new ObservedInterval(time, time, 1);
  }

  /** A duration that ended between two inspections; the first may be its start, at 0. */
  public static ObservedInterval within(double lower, double upper) {
    return new ObservedInterval(lower, upper, 1);
  }

  /** A duration last seen going on (right-censored). */
  public static ObservedInterval beyond(double time) {
    return new ObservedInterval(time, Double.POSITIVE_INFINITY, 1);
  }

  /** So many of the kind. */
  public ObservedInterval times(double count) {
    return new ObservedInterval(lower, upper, weight * count);
  }

  /** Whether the end was seen. */
  public boolean isExact() {
    return lower == upper;
  }

  /** Whether it was last seen going on. */
  public boolean isRightCensored() {
    return upper == Double.POSITIVE_INFINITY;
  }
}
