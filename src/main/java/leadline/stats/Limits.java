package leadline.stats;

/**
 * A lower and an upper confidence limit, in the unit of the estimate they belong to.
 *
 * @param lower finite
 * @param upper at least {@code lower}; positive infinity where the data set no upper limit
 */
public record Limits(double lower, double upper) {

  /**
   * @throws IllegalArgumentException if the lower limit is not finite, or not below or at the upper
   */
  public Limits {
    if (!Double.isFinite(lower) || !(lower <= upper)) {
      throw new IllegalArgumentException("no limits: " + lower + " to " + upper);
    }
  }

  static Limits around(double estimate, double margin, double least, double most) {
    return new Limits(Math.max(least, estimate - margin), Math.min(most, estimate + margin));
  }
}
