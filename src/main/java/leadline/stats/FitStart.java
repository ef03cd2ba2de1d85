package leadline.stats;

import leadline.stats.LifeData.Alike;

/**
 * Where a search begins: the shape from the spread of the log ages at failure, the offset such that
 * a Weibull distribution of that shape expects as many failures as were seen.
 *
 * @param logAge of the ages, where the family's survival is to be that of the Weibull
 */
record FitStart(StandardForm form, LifeData data, double shape, double logAge) {

  /** Of the standard deviation of log age in a Weibull distribution of shape 1, pi / root 6. */
  private static final double WEIBULL_SPREAD = 1.28;

  static FitStart of(StandardForm form, LifeData data) {
    double weights = 0;
    double sum = 0;
    double squares = 0;
    double centre = data.logAges().centre();
    for (Alike alike : data.lives()) {
      if (alike.failed()) {
        double logAge = Math.log(middle(alike.life())) - centre;
        weights += alike.weight();
        sum += alike.weight() * logAge;
        squares += alike.weight() * logAge * logAge;
      }
    }
    double mean = sum / weights;
    double spread = Math.sqrt(Math.max(0, squares / weights - mean * mean));
    double shape = Math.max(0.3, Math.min(6, WEIBULL_SPREAD / spread));
    return new FitStart(form, data, shape, mean);
  }

  /** The offset at a shape. */
  double offset(double atShape) {
    double centre = data.logAges().centre();
    double hazard = 0;
    double failures = 0;
    for (Alike alike : data.lives()) {
      Life life = alike.life();
      double end = alike.failed() ? middle(life) : life.lower();
      hazard +=
          alike.weight()
              * (Math.exp(atShape * (Math.log(end) - centre))
                  - Math.exp(atShape * (Math.log(life.entry()) - centre)));
      failures += alike.failed() ? alike.weight() : 0;
    }
    double weibullOffset = Math.log(failures / hazard);
    double there = atShape * logAge;
    return form.atLogSurvival(-Math.exp(there + weibullOffset)) - there;
  }

  private static double middle(Life life) {
    return life.lower() == 0 ? life.upper() / 2 : Math.sqrt(life.lower()) * Math.sqrt(life.upper());
  }
}
