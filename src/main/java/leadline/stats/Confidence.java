package leadline.stats;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The probability with which limits are meant to enclose the true value.
 *
 * @param level a fraction, more than 0 and less than 1
 */
public record Confidence(double level) {

  private static final NormalDistribution STANDARD_NORMAL = new NormalDistribution();

  /**
   * @throws IllegalArgumentException if the level is not between 0 and 1, both excluded
   */
  public Confidence {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("confidence level must lie between 0 and 1: " + level);
    }
  }

  /**
   * Limits at this level, as in {@code Confidence.of(0.95)}.
   *
   * @throws IllegalArgumentException if the level is not between 0 and 1, both excluded
   */
  public static Confidence of(double level) {
    return new Confidence(level);
  }

  /** The probability left outside a one-sided limit. */
  double oneTail() {
    return 1 - level;
  }

  /** The probability left outside each of two limits. */
  double eachTail() {
    return (1 - level) / 2;
  }

  /** The number of standard errors on either side of a normal estimate. */
  double normalQuantile() {
    return STANDARD_NORMAL.inverseCumulativeProbability(1 - eachTail());
  }

  /** The number of standard errors on one side of a normal estimate. */
  double oneSidedNormalQuantile() {
    return STANDARD_NORMAL.inverseCumulativeProbability(1 - oneTail());
  }
}
