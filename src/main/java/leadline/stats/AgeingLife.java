package leadline.stats;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/** A life whose distribution is known, as far as plans of replacement ask for it. */
public sealed interface AgeingLife {

  /** The chance to live beyond an age, 0 or more, in the life's unit of time. */
  double survivalBeyond(double age);

  /** Failures per unit of time of those that have reached an age, more than 0. */
  double hazardAt(double age);

  /** The mean of lives cut off at an age: the area under survival. */
  double meanUpTo(double age);

  double mean();

  /**
   * The age up to which the hazard rises; 0 where it never does, positive infinity where it always
   * does.
   */
  double hazardRisesUpTo();

  /** The chance to fail by an age. */
  default double failureBy(double age) {
    return 1 - survivalBeyond(age);
  }

  /**
   * Weibull distributed. Source: Weibull 1951, J. Appl. Mech. 18:293.
   *
   * @param shape finite and more than 0; wear where above 1
   * @param scale the age by which 63.2 % have failed, finite and more than 0
   */
  record Weibull(double shape, double scale) implements AgeingLife {
    /**
     * @throws IllegalArgumentException if a parameter is not finite and positive
     */
    public Weibull {
      if (!(shape > 0 && Double.isFinite(shape) && scale > 0 && Double.isFinite(scale))) {
        throw new IllegalArgumentException(
            "shape and scale must be finite and more than 0: " + shape + ", " + scale);
      }
    }

    private double cumulativeHazard(double age) {
      return Math.pow(age / scale, shape);
    }

    @Override
    public double survivalBeyond(double age) {
      return Math.exp(-cumulativeHazard(age));
    }

    @Override
    public double failureBy(double age) {
      return -Math.expm1(-cumulativeHazard(age));
    }

    @Override
    public double hazardAt(double age) {
      return shape / scale * Math.pow(age / scale, shape - 1);
    }

    @Override
    public double meanUpTo(double age) {
      double hazard = cumulativeHazard(age);
      // Survival is 1 to the last digit below, and 0 above, where the series would not end.
      if (hazard < 1e-17) {
        return age;
      }
      return hazard > 745 ? mean() : mean() * Gamma.regularizedGammaP(1 / shape, hazard);
    }

    @Override
    public double mean() {
      return scale * Gamma.gamma(1 + 1 / shape);
    }

    @Override
    public double hazardRisesUpTo() {
      return shape > 1 ? Double.POSITIVE_INFINITY : 0;
    }
  }

  /**
   * Lognormal distributed. Source: Meeker and Escobar 1998, Statistical Methods for Reliability
   * Data, section 4.6.
   *
   * @param mu the mean of the logarithm of the life, finite
   * @param sigma its standard deviation, finite and more than 0
   */
  record Lognormal(double mu, double sigma) implements AgeingLife {

    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** In standard deviations; beyond, no double tells survival from 0. */
    private static final double FARTHEST = 37;

    /**
     * @throws IllegalArgumentException if mu is not finite, or sigma not finite and positive
     */
    public Lognormal {
      if (!(Double.isFinite(mu) && sigma > 0 && Double.isFinite(sigma))) {
        throw new IllegalArgumentException(
            "mu must be finite, sigma finite and more than 0: " + mu + ", " + sigma);
      }
    }

    private double deviations(double age) {
      return (Math.log(age) - mu) / sigma;
    }

    private static double upperTail(double deviations) {
      return Erf.erfc(deviations / Math.sqrt(2)) / 2;
    }

    @Override
    public double survivalBeyond(double age) {
      return age == 0 ? 1 : upperTail(deviations(age));
    }

    @Override
    public double failureBy(double age) {
      return age == 0 ? 0 : upperTail(-deviations(age));
    }

    @Override
    public double hazardAt(double age) {
      return NORMAL.density(deviations(age)) / (sigma * age * survivalBeyond(age));
    }

    @Override
    public double meanUpTo(double age) {
      return age == 0 ? 0 : age * survivalBeyond(age) + mean() * upperTail(sigma - deviations(age));
    }

    @Override
    public double mean() {
      return Math.exp(mu + sigma * sigma / 2);
    }

    /**
     * Where the inverse Mills ratio exceeds the standardised log age by sigma. Source: Sweet 1990,
     * IEEE Trans. Reliab. 39:30 (from memory); it follows from the hazard's derivative.
     */
    @Override
    public double hazardRisesUpTo() {
      double low = -FARTHEST;
      double high = FARTHEST;
      while (high - low > 1e-12 * FARTHEST) {
        double middle = (low + high) / 2;
        if (NORMAL.density(middle) / upperTail(middle) - middle > sigma) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return Math.exp(mu + sigma * high);
    }
  }
}
