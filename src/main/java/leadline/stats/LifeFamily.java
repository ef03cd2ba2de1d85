package leadline.stats;

/**
 * A family of life distributions in which log age has a location mu and a scale sigma. Source:
 * Meeker and Escobar 1998, Statistical Methods for Reliability Data, chapter 4.
 */
public enum LifeFamily {
  /** S(t) = exp(-(t / scale)^shape), mu = log scale, sigma = 1 / shape. */
  WEIBULL,
  /** Log age is normal with mean mu and standard deviation sigma; the scale is the median. */
  LOGNORMAL,
  /** S(t) = 1 / (1 + (t / scale)^shape), sigma = 1 / shape; the scale is the median. */
  LOG_LOGISTIC;

  StandardForm standardForm() {
    return switch (this) {
      case WEIBULL -> new SmallestExtremeValue();
      case LOGNORMAL -> new StandardNormal();
      case LOG_LOGISTIC -> new StandardLogistic();
    };
  }
}
