package leadline.stats;

/**
 * Of log log-logistic ages: survival 1 / (1 + e^z). Source: Meeker and Escobar 1998, Statistical
 * Methods for Reliability Data, section 4.10; the mean, infinite at a shape of 1 or less: Lawless
 * 2003, Statistical Models and Methods for Lifetime Data, section 1.3.
 */
final class StandardLogistic implements StandardForm {

  @Override
  public void logDensity(double z, Jet jet) {
    double failed = failed(z);
    jet.set(z - 2 * softplus(z), 1 - 2 * failed, -2 * failed * failed(-z));
  }

  @Override
  public void logSurvival(double z, Jet jet) {
    double failed = failed(z);
    jet.set(-softplus(z), -failed, -failed * failed(-z));
  }

  @Override
  public double atLogSurvival(double logSurvival) {
    return Jet.logComplement(logSurvival) - logSurvival;
  }

  @Override
  public void logMean(double shape, Jet jet) {
    double angle = Math.PI / shape;
    double slope = 1 / angle - 1 / Math.tan(angle);
    double curvature = 1 / (Math.sin(angle) * Math.sin(angle)) - 1 / (angle * angle);
    jet.set(
        Math.log(angle / Math.sin(angle)),
        -slope * angle / shape,
        (curvature * angle + 2 * slope) * angle / (shape * shape));
  }

  @Override
  public double leastShapeWithMean() {
    return 1;
  }

  private static double failed(double z) {
    return 1 / (1 + Math.exp(-z));
  }

  private static double softplus(double z) {
    return Math.max(z, 0) + Math.log1p(Math.exp(-Math.abs(z)));
  }
}
