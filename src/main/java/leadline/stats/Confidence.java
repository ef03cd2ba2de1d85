package leadline.stats;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

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

  /**
   * The higher level at which profile-likelihood limits of a distribution with free shape and scale
   * enclose the true value about as often as this one says, from so few lives that the chi-squared
   * quantile is too low: a fall of the likelihood by n log(1 + t^2 / (n - 2)) / 2, t the quantile
   * of Student's distribution with n - 2 degrees of freedom. That is exact for a straight line
   * through n normal points (Seber and Lee 2003, Linear Regression Analysis, section 4.1) and with
   * many lives is this level again; for censored lives it is a rule whose coverage has been
   * simulated only.
   *
   * @param lives how many lives the fit is of, by weight; fewer than 3 count as 3
   * @throws IllegalArgumentException if there is no life
   */
  public Confidence forSoFewLives(double lives) {
    if (!(lives > 0 && Double.isFinite(lives))) {
      throw new IllegalArgumentException("lives must be finite and more than 0: " + lives);
    }
    double number = Math.max(3, lives);
    double quantile = new TDistribution(number - 2).inverseCumulativeProbability(1 - eachTail());
    double fall = number * Math.log1p(quantile * quantile / (number - 2));
    return new Confidence(1 - 2 * STANDARD_NORMAL.cumulativeProbability(-Math.sqrt(fall)));
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
