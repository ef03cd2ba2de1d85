package leadline.stats;

import java.util.Optional;
import leadline.stats.FitOutcome.Fitted;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FitOutcome.Reason;

/**
 * The scale of a Weibull distribution whose shape is assumed, fitted by maximum likelihood to lives
 * of any censoring, with delayed entry: with few failures or none still of use, if shown for
 * several shapes. At a shape of 1 it is the exponential distribution, its scale the mean. Source:
 * Nelson 1985, J. Qual. Technol. 17:140; Meeker and Escobar 1998, Statistical Methods for
 * Reliability Data, sections 7.3 and 8.5.
 */
public final class KnownShapeFit implements FittedLife {

  private static final int PARAMETERS = 1;

  private final double shape;
  private final LifeData data;
  private final LogLikelihood logLikelihood;
  private final double offset;
  private final Expansion top;

  private KnownShapeFit(double shape, LifeData data, LogLikelihood logLikelihood, double offset) {
    this.shape = shape;
    this.data = data;
    this.logLikelihood = logLikelihood;
    this.offset = offset;
    this.top = logLikelihood.at(shape, offset);
  }

  /**
   * The fit; none without a failure, when the limit is an exact lower one of the scale, and none
   * when nothing outlived any age beyond its entry, when it is an upper one.
   *
   * @param shape finite and more than 0
   * @throws IllegalArgumentException if the shape is not finite and positive
   */
  public static FitOutcome<KnownShapeFit> of(double shape, LifeData data) {
    if (!(shape > 0 && Double.isFinite(shape))) {
      throw new IllegalArgumentException("a shape must be finite and more than 0: " + shape);
    }
    if (data.failures() == 0) {
      return new NoFiniteMaximum<>(
          Reason.NO_FAILURE, confidence -> lowerWithoutFailure(shape, data, confidence));
    }
    StandardForm form = LifeFamily.WEIBULL.standardForm();
    LogLikelihood logLikelihood = new LogLikelihood(form, data.logAges());
    double start = FitStart.of(form, data).offset(shape);
    if (data.exposure(shape) == 0) {
      return new NoFiniteMaximum<>(
          Reason.NO_SURVIVAL,
          confidence -> upperWithoutSurvival(shape, logLikelihood, start, confidence));
    }
    return new Fitted<>(
        new KnownShapeFit(
            shape, data, logLikelihood, new OffsetSection(logLikelihood, shape).highest(start)));
  }

  /** None of the lives failed: exp(-exposure / scale^shape) is the chance of that. */
  private static Optional<OneSidedLimit> lowerWithoutFailure(
      double shape, LifeData data, Confidence confidence) {
    double exposure = data.exposure(shape);
    return exposure > 0
        ? Optional.of(
            new OneSidedLimit.ScaleAtLeast(
                scaleAtHazard(shape, exposure, -Math.log(confidence.oneTail()))))
        : Optional.empty();
  }

  /** All of the lives failed unseen: the likelihood is the chance of that. */
  private static Optional<OneSidedLimit> upperWithoutSurvival(
      double shape, LogLikelihood logLikelihood, double start, Confidence confidence) {
    double height = Math.log(confidence.oneTail());
    OffsetSection section = new OffsetSection(logLikelihood, shape);
    double above = start;
    while (section.at(above).value() <= height) {
      above += 1;
    }
    double limit = section.fallen(above, -1, height);
    return Optional.of(
        new OneSidedLimit.ScaleAtMost(Math.exp(logLikelihood.centre() - limit / shape)));
  }

  /** In the unit of age. */
  public double scale() {
    return scaleAt(offset);
  }

  /** Exponential at a shape of 1, else Weibull. */
  @Override
  public LifeDistribution distribution() {
    return shape == 1 ? LifeDistribution.EXPONENTIAL : LifeDistribution.WEIBULL;
  }

  @Override
  public double logLikelihood() {
    return top.value();
  }

  @Override
  public double aic() {
    return 2 * PARAMETERS - 2 * logLikelihood();
  }

  /** What is left of the slope of the log likelihood by log scale: nearly 0. */
  public double slopeByLogScale() {
    return -shape * top.byOffset();
  }

  /** By the observed information. */
  public double standardErrorOfLogScale() {
    return 1 / (shape * Math.sqrt(-top.byOffsetTwice()));
  }

  /** The mean age at the end, in the unit of age. */
  public double mean() {
    return estimate(LifeQuantity.mean());
  }

  @Override
  public double estimate(LifeQuantity quantity) {
    return quantityAt(quantity, offset);
  }

  @Override
  public Limits waldLimits(LifeQuantity quantity, Confidence confidence) {
    double margin = confidence.normalQuantile() * shape * standardErrorOfLogScale();
    return limits(quantity, offset - margin, offset + margin);
  }

  @Override
  public Limits profileLimits(LifeQuantity quantity, Confidence confidence) {
    double standardErrors = confidence.normalQuantile();
    return limits(quantity, fallen(-standardErrors), fallen(standardErrors));
  }

  private Limits limits(LifeQuantity quantity, double least, double most) {
    double one = quantityAt(quantity, least);
    double other = quantityAt(quantity, most);
    return new Limits(Math.min(one, other), Math.max(one, other));
  }

  private double quantityAt(LifeQuantity quantity, double anOffset) {
    Chart chart =
        quantity.among(new LocationScaleCharts(logLikelihood.form(), logLikelihood.centre()));
    return chart.quantity(chart.coordinate(shape, anOffset));
  }

  @Override
  public double cumulativeHazardTo(double age) {
    return age == 0 ? 0 : Math.exp(shape * (Math.log(age) - logLikelihood.centre()) + offset);
  }

  /**
   * Limits of the scale from the chi-squared distribution with 2r + 2 and 2r degrees of freedom,
   * exact when r failures are counted in a fixed exposure; empty unless all failures are exact.
   * Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 8.4.5.1; with a known shape,
   * ages raised to it: Nelson 1985.
   */
  public Optional<Limits> exactLimits(Confidence confidence) {
    double failures = data.failures();
    double tail = confidence.eachTail();
    return data.hasOnlyExactFailures()
        ? Optional.of(
            new Limits(
                scaleAtHazard(Quantiles.gamma(failures + 1, 1 - tail)),
                scaleAtHazard(Quantiles.gamma(failures, tail))))
        : Optional.empty();
  }

  /**
   * The one-sided lower limit of the scale: by the chi-squared distribution with 2r + 2 degrees of
   * freedom when all r failures are exact (Nelson 1985), else by the signed root of the likelihood
   * ratio, approximate.
   */
  public double lowerLimit(Confidence confidence) {
    return data.hasOnlyExactFailures()
        ? scaleAtHazard(Quantiles.gamma(data.failures() + 1, confidence.level()))
        : scaleAt(fallen(confidence.oneSidedNormalQuantile()));
  }

  /** The scale at which lives with this exposure have this cumulative hazard together. */
  private double scaleAtHazard(double hazard) {
    return scaleAtHazard(shape, data.exposure(shape), hazard);
  }

  private static double scaleAtHazard(double shape, double exposure, double hazard) {
    return Math.pow(exposure / hazard, 1 / shape);
  }

  private double scaleAt(double anOffset) {
    return Math.exp(logLikelihood.centre() - anOffset / shape);
  }

  /** The offset at which the likelihood has fallen, above the top for more than 0. */
  private double fallen(double standardErrors) {
    double height = top.value() - standardErrors * standardErrors / 2;
    double away = standardErrors / Math.sqrt(-top.byOffsetTwice());
    return new OffsetSection(logLikelihood, shape).fallen(offset, away, height);
  }
}
