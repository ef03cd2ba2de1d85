package leadline.stats;

import org.hipparchus.special.Gamma;

/**
 * A statistic that is chi-squared if there is nothing to find.
 *
 * @param statistic 0 or more
 * @param degreesOfFreedom 1 or more
 */
public record ChiSquared(double statistic, int degreesOfFreedom) {

  /**
   * @throws IllegalArgumentException if the statistic is negative or not a number, or no degree of
   *     freedom is left
   */
  public ChiSquared {
    if (!(statistic >= 0) || degreesOfFreedom < 1) {
      throw new IllegalArgumentException("no chi-squared: " + statistic + ", " + degreesOfFreedom);
    }
  }

  /** The chance of a statistic this large or larger, exact in its last digits however small. */
  public double upperTail() {
    return statistic == 0 ? 1 : Gamma.regularizedGammaQ(degreesOfFreedom / 2.0, statistic / 2);
  }

  /** The chance of a statistic this small or smaller. */
  public double lowerTail() {
    return statistic == 0 ? 0 : Gamma.regularizedGammaP(degreesOfFreedom / 2.0, statistic / 2);
  }

  /** Twice the smaller tail, at most 1. */
  public double twoSided() {
    return Math.min(1, 2 * Math.min(lowerTail(), upperTail()));
  }
}
