package leadline.stats;

import org.hipparchus.special.Erf;

/**
 * A statistic that is standard normal if there is nothing to find.
 *
 * @param statistic a finite number
 */
public record NormalStatistic(double statistic) {

  /**
   * @throws IllegalArgumentException if the statistic is not finite
   */
  public NormalStatistic {
    if (!Double.isFinite(statistic)) {
      throw new IllegalArgumentException("no normal statistic: " + statistic);
    }
  }

  /** The chance of a statistic this small or smaller. */
  public double lowerTail() {
    return Erf.erfc(-statistic / Math.sqrt(2)) / 2;
  }

  /** The chance of a statistic this large or larger. */
  public double upperTail() {
    return Erf.erfc(statistic / Math.sqrt(2)) / 2;
  }

  /** The chance of a statistic this far from 0 or farther. */
  public double twoSided() {
    return Erf.erfc(Math.abs(statistic) / Math.sqrt(2));
  }
}
