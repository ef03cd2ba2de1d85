package leadline.stats;

/**
 * Of log lognormal ages. Source: Meeker and Escobar 1998, Statistical Methods for Reliability Data,
 * section 4.6; tails by the rational approximations of Cody 1969, Math. Comp. 23:631, with a
 * relative error near 1e-16, for the library has no logarithm of a tail.
 */
final class StandardNormal implements StandardForm {

  private static final double PEAK = 1 / Math.sqrt(2 * Math.PI);
  private static final double LOG_PEAK = Math.log(PEAK);
  private static final double LOG_HALF = Math.log(0.5);

  /** Where Cody's approximations hand over to one another. */
  private static final double CENTRAL = 0.67448975;

  private static final double FAR = Math.sqrt(32);

  private static final double[] CENTRAL_ABOVE = {
    0.06568233791820745,
    2.2352520354606837,
    161.02823106855587,
    1067.6894854603709,
    18154.98125334356
  };
  private static final double[] CENTRAL_BELOW = {
    1, 47.202581904688245, 976.0985517377767, 10260.932208618979, 45507.78933502673
  };
  private static final double[] MIDDLE_ABOVE = {
    1.0765576773720192e-08, 0.39894151208813466, 8.883149794388377, 93.50665613217785,
    597.2702763948002, 2494.5375852903726, 6848.190450536283, 11602.65143764735,
    9842.714838383978
  };
  private static final double[] MIDDLE_BELOW = {
    1,
    22.266688044328117,
    235.387901782625,
    1519.3775994075547,
    6485.558298266761,
    18615.571640885097,
    34900.95272114598,
    38912.00328609327,
    19685.429676859992
  };
  private static final double[] FAR_ABOVE = {
    0.023073441764940174,
    0.215898534057957,
    0.12740116116024736,
    0.022235277870649807,
    0.0014216191932278934,
    2.9112874951168793e-05
  };
  private static final double[] FAR_BELOW = {
    1,
    1.284260096144911,
    0.4682382124808651,
    0.06598813786892856,
    0.0037823963320275824,
    7.297515550839662e-05
  };

  @Override
  public void logDensity(double z, Jet jet) {
    jet.set(LOG_PEAK - z * z / 2, -z, -1);
  }

  @Override
  public void logSurvival(double z, Jet jet) {
    double size = Math.abs(z);
    double bell = Math.exp(-z * z / 2);
    double logSurvival;
    double hazard;
    if (size <= CENTRAL) {
      double survival = 0.5 - z * ratio(CENTRAL_ABOVE, CENTRAL_BELOW, z * z);
      logSurvival = Math.log(survival);
      hazard = PEAK * bell / survival;
    } else {
      double tailOverBell = tailOverBell(size);
      double farther = tailOverBell * bell;
      logSurvival = z > 0 ? Math.log(tailOverBell) - z * z / 2 : Math.log1p(-farther);
      hazard = z > 0 ? PEAK / tailOverBell : PEAK * bell / (1 - farther);
    }
    jet.set(logSurvival, -hazard, -hazard * (hazard - z));
  }

  @Override
  public double atLogSurvival(double logSurvival) {
    return logSurvival > LOG_HALF ? -beyond(Jet.logComplement(logSurvival)) : beyond(logSurvival);
  }

  @Override
  public void logMean(double shape, Jet jet) {
    double variance = 1 / (shape * shape);
    jet.set(variance / 2, -variance / shape, 3 * variance * variance);
  }

  @Override
  public double leastShapeWithMean() {
    return 0;
  }

  /** For a survival of a half or less. Newton's steps fall to it, for log survival is concave. */
  private double beyond(double logSurvival) {
    Jet jet = new Jet();
    double z = Math.sqrt(-2 * logSurvival);
    double step = z;
    while (step > 1e-15 * z && z > 0) {
      logSurvival(z, jet);
      step = (logSurvival - jet.value) / -jet.first;
      z -= step;
    }
    return z;
  }

  /** Of z beyond the centre. */
  private static double tailOverBell(double z) {
    if (z < FAR) {
      return ratio(MIDDLE_ABOVE, MIDDLE_BELOW, z);
    }
    double inverseSquare = 1 / (z * z);
    return (PEAK - inverseSquare * ratio(FAR_ABOVE, FAR_BELOW, inverseSquare)) / z;
  }

  private static double ratio(double[] above, double[] below, double x) {
    return polynomial(above, x) / polynomial(below, x);
  }

  private static double polynomial(double[] highestFirst, double x) {
    double sum = 0;
    for (double coefficient : highestFirst) {
      sum = sum * x + coefficient;
    }
    return sum;
  }
}
