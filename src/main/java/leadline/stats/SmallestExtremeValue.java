package leadline.stats;

import org.hipparchus.special.Gamma;

/**
 * Of log Weibull ages: survival exp(-e^z). Source: Meeker and Escobar 1998, Statistical Methods for
 * Reliability Data, section 4.8; Lawless 2003, Statistical Models and Methods for Lifetime Data,
 * section 1.3.
 */
final class SmallestExtremeValue implements StandardForm {

  @Override
  public void logDensity(double z, Jet jet) {
    double hazard = Math.exp(z);
    jet.set(z - hazard, 1 - hazard, -hazard);
  }

  @Override
  public void logSurvival(double z, Jet jet) {
    double hazard = Math.exp(z);
    jet.set(-hazard, -hazard, -hazard);
  }

  @Override
  public double atLogSurvival(double logSurvival) {
    return Math.log(-logSurvival);
  }

  @Override
  public void logMean(double shape, Jet jet) {
    double sigma = 1 / shape;
    double slope = Gamma.digamma(1 + sigma);
    jet.set(
        Gamma.logGamma(1 + sigma),
        -slope * sigma * sigma,
        (Gamma.trigamma(1 + sigma) * sigma + 2 * slope) * sigma * sigma * sigma);
  }

  @Override
  public double leastShapeWithMean() {
    return 0;
  }
}
