package leadline.stats;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.DoubleStream;
import leadline.stats.FitOutcome.Fitted;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FitOutcome.Reason;
import leadline.stats.ProfileLikelihood.Side;

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
  private final LogLikelihood logLikelihood;
  private final Peak peak;

  /** Shapes to start from, as multiples of the one that the data suggest. */
  private static final double[] STARTS = {1, 0.2, 4};

  private LifeFit(LifeFamily family, LogLikelihood logLikelihood, Peak peak) {
    this.family = family;
    this.logLikelihood = logLikelihood;
    this.peak = peak;
  }

  /**
   * Fits a family to lives. Without delayed entry the likelihood is concave, so that the fit is the
   * one highest point; with it, the highest that several starts lead to, except that a Weibull
   * likelihood without intervals has one peak even so: log hazard is linear in log age.
   */
  public static FitOutcome<LifeFit> of(LifeFamily family, LifeData data) {
    Optional<Reason> reason = Existence.reasonAgainst(data);
    if (reason.isPresent()) {
      return without(reason.get(), data);
    }
    LogLikelihood logLikelihood = new LogLikelihood(family.standardForm(), data.logAges());
    FitStart start = FitStart.of(family.standardForm(), data);
    Optional<Peak> peak =
        hasOnePeak(family, data)
            ? start.peak(logLikelihood, 1).or(() -> highest(logLikelihood, start))
            : highest(logLikelihood, start);
    if (peak.isEmpty()) {
      return without(
          risesTowardsNoShape(logLikelihood, start) ? Reason.NO_RISE_WITH_AGE : Reason.NOT_FOUND,
          data);
    }
    return peak.get().shape() * data.logAges().range() < NO_SHAPE
        ? without(Reason.NO_RISE_WITH_AGE, data)
        : new Fitted<>(new LifeFit(family, logLikelihood, peak.get()));
  }

  private static boolean risesTowardsNoShape(LogLikelihood logLikelihood, FitStart start) {
    double last = Double.NEGATIVE_INFINITY;
    for (double shape = 8 * start.shape(); shape > NO_SHAPE; shape /= 2) {
      double offset = new OffsetSection(logLikelihood, shape).highest(start.offset(shape));
      double value = logLikelihood.at(shape, offset).value();
      if (!(value > last)) {
        return false;
      }
      last = value;
    }
    return true;
  }

  private static boolean hasOnePeak(LifeFamily family, LifeData data) {
    return !data.hasDelayedEntry() || (family == LifeFamily.WEIBULL && data.hasOnlyExactFailures());
  }

  private static Optional<Peak> highest(LogLikelihood logLikelihood, FitStart start) {
    return DoubleStream.of(STARTS)
        .mapToObj(factor -> start.peak(logLikelihood, factor))
        .flatMap(Optional::stream)
        .max(Comparator.comparingDouble(found -> found.expansion().value()));
  }

  private static FitOutcome<LifeFit> without(Reason reason, LifeData data) {
    return new NoFiniteMaximum<>(reason, confidence -> SurvivalBound.of(data, confidence));
  }

  public LifeFamily family() {
    return family;
  }

  /** The location of log age: the logarithm of the scale. */
  public double mu() {
    return logLikelihood.centre() - peak.offset() / peak.shape();
  }

  /** The scale of log age: 1 / shape. */
  public double sigma() {
    return 1 / peak.shape();
  }

  /** The natural logarithm of the likelihood, of densities per unit of age; weights multiply. */
  public double logLikelihood() {
    return peak.expansion().value();
  }

  /** Akaike's information criterion, 4 - 2 log likelihood. Source: Akaike 1974. */
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

  /** At the fitted parameters. */
  @Override
  public double estimate(LifeQuantity quantity) {
    Chart chart = chart(quantity);
    return chart.isFiniteAt(peak.shape())
        ? chart.quantity(chart.coordinate(peak.shape(), peak.offset()))
        : Double.POSITIVE_INFINITY;
  }

  /**
   * Approximate limits, a number of standard errors either way on the scale named with the
   * quantity; too narrow with few failures. Where the estimate is infinite, 0 and infinity. Source:
   * Meeker and Escobar 1998, section 8.4.
   */
  public Limits waldLimits(LifeQuantity quantity, Confidence confidence) {
    double standardErrors = confidence.normalQuantile();
    return limits(
        quantity,
        (profile, side) ->
            profile.estimate()
                + (side == Side.ABOVE ? standardErrors : -standardErrors)
                    * profile.standardError());
  }

  /**
   * Approximate limits where the profile likelihood has fallen by half a chi-squared quantile with
   * one degree of freedom; infinite, or 0, where it never does. Where the estimate is infinite, 0
   * and infinity. Source: Meeker and Escobar 1998, section 8.3.
   */
  @Override
  public Limits profileLimits(LifeQuantity quantity, Confidence confidence) {
    double standardErrors = confidence.normalQuantile();
    Chart chart = chart(quantity);
    if (chart.isStraight()) {
      return limits(quantity, (profile, side) -> profile.limit(side, standardErrors));
    }
    LikelihoodRegion region = new LikelihoodRegion(logLikelihood, peak, standardErrors);
    return limits(quantity, (profile, side) -> region.extreme(chart, side));
  }

  private interface LimitOnSide {
    double of(ProfileLikelihood profile, Side side);
  }

  private Limits limits(LifeQuantity quantity, LimitOnSide limit) {
    Chart chart = chart(quantity);
    if (!chart.isFiniteAt(peak.shape())) {
      return new Limits(0, Double.POSITIVE_INFINITY);
    }
    ProfileLikelihood profile = new ProfileLikelihood(logLikelihood, chart, peak);
    double one = chart.quantity(limit.of(profile, Side.BELOW));
    double other = chart.quantity(limit.of(profile, Side.ABOVE));
    return new Limits(Math.min(Math.min(one, other), Double.MAX_VALUE), Math.max(one, other));
  }

  private Chart chart(LifeQuantity quantity) {
    return quantity.chart(logLikelihood.form(), logLikelihood.centre());
  }
}
