package leadline.stats;

/** The distributions that lives are fitted with. */
public enum LifeDistribution {
  /** S(t) = exp(-t / mean). */
  EXPONENTIAL,
  /** S(t) = exp(-(t / scale)^shape). */
  WEIBULL,
  /** Log age is normal. */
  LOGNORMAL,
  /** The density is in proportion to t^(shape - 1) exp(-t / scale). */
  GAMMA,
  /** S(t) = 1 / (1 + (t / scale)^shape). */
  LOG_LOGISTIC;

  /** Fits all of its parameters to lives. */
  public FitOutcome<? extends FittedLife> fit(LifeData data) {
    return switch (this) {
      case EXPONENTIAL -> KnownShapeFit.of(1, data);
      case WEIBULL -> LifeFit.of(LifeFamily.WEIBULL, data);
      case LOGNORMAL -> LifeFit.of(LifeFamily.LOGNORMAL, data);
      case GAMMA -> GammaFit.of(data);
      case LOG_LOGISTIC -> LifeFit.of(LifeFamily.LOG_LOGISTIC, data);
    };
  }
}
