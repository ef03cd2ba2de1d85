package leadline.stats;

import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;

/** Quantiles of the distributions behind the exact limits. */
final class Quantiles {

  /** So small that the solver stops on relative accuracy: a rare event's share may be 1e-9. */
  private static final double ABSOLUTE_ACCURACY = 1e-300;

  private Quantiles() {}

  /** Of the gamma distribution with scale 1: half a chi-squared with twice the shape. */
  static double gamma(double shape, double probability) {
    return new GammaDistribution(shape, 1, ABSOLUTE_ACCURACY)
        .inverseCumulativeProbability(probability);
  }

  static double beta(long alpha, long beta, double probability) {
    return beta((double) alpha, (double) beta, probability);
  }

  static double beta(double alpha, double beta, double probability) {
    return new BetaDistribution(alpha, beta, ABSOLUTE_ACCURACY)
        .inverseCumulativeProbability(probability);
  }
}
