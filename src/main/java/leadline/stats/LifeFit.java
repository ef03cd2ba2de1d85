package leadline.stats;

import java.util.Optional;
import leadline.stats.FitOutcome.Fitted;
import leadline.stats.FitOutcome.Reason;

/**
 * A life distribution with free shape and scale, fitted by maximum likelihood to lives of any
 * censoring, with delayed entry. Source: Meeker and Escobar 1998, Statistical Methods for
 * Reliability Data, chapters 7, 8 and 11; Lawless 2003, Statistical Models and Methods for Lifetime
 * Data, chapter 5.
 */
public final class LifeFit implements FittedLife {

  private static final int PARAMETERS = 2;

  /** Below, over the whole range of ages, no shape is left that a fit could tell from 0. */
  private static final double NO_SHAPE = 1e-5;

  private final LifeFamily family;
  private final LogLikelihood likelihood;
  private final Peak peak;
  private final PeakLimits limits;

  private LifeFit(LifeFamily family, LogLikelihood likelihood, Peak peak) {
    this.family = family;
    this.likelihood = likelihood;
    this.peak = peak;
    this.limits =
        new PeakLimits(
            likelihood, peak, new LocationScaleCharts(likelihood.form(), likelihood.centre()));
  }

  /**
   * Fits a family to lives. Without delayed entry the likelihood is concave, so that the fit is the
   * one highest point; with it, the highest that several starts lead to, except that a Weibull
   * likelihood without intervals has one peak even so: log hazard is linear in log age.
   */
  public static FitOutcome<LifeFit> of(LifeFamily family, LifeData data) {
    Optional<Reason> reason = Existence.reasonAgainst(data);
    if (reason.isPresent()) {
      return Existence.without(reason.get(), data);
    }
    LogLikelihood likelihood = new LogLikelihood(family.standardForm(), data.logAges());
    FitStart start = FitStart.of(family.standardForm(), data);
    PeakSearch search = new PeakSearch(likelihood, start.shape(), start::offset);
    Optional<Peak> peak = hasOnePeak(family, data) ? search.only() : search.highest();
    if (peak.isEmpty()) {
      return Existence.without(search.reasonAgainst(), data);
    }
    return peak.get().shape() * data.logAges().range() < NO_SHAPE
        ? Existence.without(Reason.NO_RISE_WITH_AGE, data)
        : new Fitted<>(new LifeFit(family, likelihood, peak.get()));
  }

  private static boolean hasOnePeak(LifeFamily family, LifeData data) {
    return !data.hasDelayedEntry() || (family == LifeFamily.WEIBULL && data.hasOnlyExactFailures());
  }

  public LifeFamily family() {
    return family;
  }

  @Override
  public LifeDistribution distribution() {
    return switch (family) {
      case WEIBULL -> LifeDistribution.WEIBULL;
      case LOGNORMAL -> LifeDistribution.LOGNORMAL;
      case LOG_LOGISTIC -> LifeDistribution.LOG_LOGISTIC;
    };
  }

  /** The location of log age: the logarithm of the scale. */
  public double mu() {
    return likelihood.centre() - peak.offset() / peak.shape();
  }

  /** The scale of log age: 1 / shape. */
  public double sigma() {
    return 1 / peak.shape();
  }

  @Override
  public double logLikelihood() {
    return peak.expansion().value();
  }

  @Override
  public double aic() {
    return 2 * PARAMETERS - 2 * logLikelihood();
  }

  /** What is left of the slope of the log likelihood by mu: nearly 0. */
  public double slopeByMu() {
    return -peak.shape() * peak.expansion().byOffset();
  }

  /** What is left of the slope of the log likelihood by log sigma: nearly 0. */
  public double slopeByLogSigma() {
    return -peak.shape() * peak.expansion().byShape() - peak.offset() * peak.expansion().byOffset();
  }

  /** By the observed information in (mu, log sigma). */
  public double standardErrorOfMu() {
    return Math.sqrt(informationOfLogSigma() / informationDeterminant());
  }

  /** By the observed information in (mu, log sigma). */
  public double standardErrorOfLogSigma() {
    return Math.sqrt(informationOfMu() / informationDeterminant());
  }

  /** By the observed information in (mu, log sigma). */
  public double covarianceOfMuAndLogSigma() {
    return -informationOfBoth() / informationDeterminant();
  }

  private double informationOfMu() {
    return -peak.shape() * peak.shape() * peak.expansion().byOffsetTwice();
  }

  private double informationOfBoth() {
    return -peak.shape()
        * (peak.shape() * peak.expansion().byBoth()
            + peak.offset() * peak.expansion().byOffsetTwice());
  }

  private double informationOfLogSigma() {
    return -(peak.shape() * peak.shape() * peak.expansion().byShapeTwice()
        + 2 * peak.shape() * peak.offset() * peak.expansion().byBoth()
        + peak.offset() * peak.offset() * peak.expansion().byOffsetTwice());
  }

  private double informationDeterminant() {
    return informationOfMu() * informationOfLogSigma() - informationOfBoth() * informationOfBoth();
  }

  @Override
  public double estimate(LifeQuantity quantity) {
    return limits.estimate(quantity);
  }

  @Override
  public Limits waldLimits(LifeQuantity quantity, Confidence confidence) {
    return limits.wald(quantity, confidence);
  }

  @Override
  public Limits profileLimits(LifeQuantity quantity, Confidence confidence) {
    return limits.profile(quantity, confidence);
  }

  @Override
  public double cumulativeHazardTo(double age) {
    Jet jet = new Jet();
    likelihood
        .form()
        .logSurvival(peak.shape() * (Math.log(age) - likelihood.centre()) + peak.offset(), jet);
    return age == 0 ? 0 : -jet.value;
  }
}
