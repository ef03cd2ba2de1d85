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

  /** The natural logarithm of the likelihood, of densities per unit of age; weights multiply. */
  public double logLikelihood() {
    return top.value();
  }

  /** Akaike's information criterion, 2 - 2 log likelihood. Source: Akaike 1974. */
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
    Jet logMean = new Jet();
    logLikelihood.form().logMean(shape, logMean);
    return scale() * Math.exp(logMean.value);
  }

  /**
   * The age by which a share has ended, in the unit of age: B10 for a tenth. Limits of the scale,
   * multiplied by the same as the scale, are its limits.
   *
   * @throws IllegalArgumentException if the share is not between 0 and 1, both excluded
   */
  public double quantile(double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("a share must lie between 0 and 1: " + share);
    }
    return scale() * Math.exp(logLikelihood.form().quantile(share) / shape);
  }

  /**
   * Approximate limits of the scale, a number of standard errors either way on the scale of its
   * logarithm. Source: Meeker and Escobar 1998, section 7.3.3.
   */
  public Limits waldLimits(Confidence confidence) {
    double margin = confidence.normalQuantile() * standardErrorOfLogScale();
    return new Limits(scale() * Math.exp(-margin), scale() * Math.exp(margin));
  }

  /**
   * Approximate limits of the scale, where the likelihood has fallen by half a chi-squared quantile
   * with one degree of freedom. Source: Meeker and Escobar 1998, section 7.3.2.
   */
  public Limits profileLimits(Confidence confidence) {
    double standardErrors = confidence.normalQuantile();
    return new Limits(scaleAt(fallen(standardErrors)), scaleAt(fallen(-standardErrors)));
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

  @Override
  public double estimate(LifeQuantity quantity) {
    return quantityAt(quantity, offset);
  }

  @Override
  public Limits profileLimits(LifeQuantity quantity, Confidence confidence) {
    double standardErrors = confidence.normalQuantile();
    double one = quantityAt(quantity, fallen(standardErrors));
    double other = quantityAt(quantity, fallen(-standardErrors));
    return new Limits(Math.min(one, other), Math.max(one, other));
  }

  private double quantityAt(LifeQuantity quantity, double anOffset) {
    Chart chart = quantity.chart(logLikelihood.form(), logLikelihood.centre());
    return chart.quantity(chart.coordinate(shape, anOffset));
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
