package leadline.stats;

import java.util.Optional;
import leadline.stats.FitOutcome.Fitted;
import leadline.stats.FitOutcome.Reason;

/**
 * A gamma distribution with free shape and scale, fitted by maximum likelihood to lives of any
 * censoring, with delayed entry. Its mean is shape times scale; at a shape of 1 it is exponential.
 * Source: Lawless 2003, Statistical Models and Methods for Lifetime Data, section 5.1.
 */
public final class GammaFit implements FittedLife {

  private static final int PARAMETERS = 2;

  /** Below, over the whole range of ages, no shape is left that a fit could tell from 0. */
  private static final double NO_SHAPE = 1e-10;

  /** Of log age: that of a Weibull distribution of shape 1, pi / root 6. */
  private static final double WEIBULL_SPREAD = 1.28;

  private final GammaLikelihood likelihood;
  private final Peak peak;
  private final double offsetOfMean;
  private final Expansion aboutMean;
  private final PeakLimits limits;

  private GammaFit(GammaLikelihood likelihood, Peak peak) {
    this.likelihood = likelihood;
    this.peak = peak;
    this.offsetOfMean = peak.offset() / GammaPlane.stretch(peak.shape());
    this.aboutMean = likelihood.aboutMean(peak.shape(), offsetOfMean).expansion();
    this.limits = new PeakLimits(likelihood, peak, new GammaCharts(likelihood.centre()));
  }

  /**
   * Fits to lives: the highest point that several starts lead to, for the likelihood is not known
   * to have one peak only.
   */
  public static FitOutcome<GammaFit> of(LifeData data) {
    Optional<Reason> reason = Existence.reasonAgainst(data);
    if (reason.isPresent()) {
      return Existence.without(reason.get(), data);
    }
    GammaLikelihood likelihood = new GammaLikelihood(data.logAges());
    FitStart start = FitStart.of(LifeFamily.WEIBULL.standardForm(), data);
    double spread = WEIBULL_SPREAD / start.shape();
    PeakSearch search =
        new PeakSearch(
            likelihood,
            1 / (spread * spread),
            shape -> new OffsetSection(likelihood, shape).highest(0));
    Optional<Peak> peak = search.highest();
    if (peak.isEmpty()) {
      return Existence.without(search.reasonAgainst(), data);
    }
    double range = data.logAges().range();
    return peak.get().shape() * range * range < NO_SHAPE
        ? Existence.without(Reason.NO_RISE_WITH_AGE, data)
        : new Fitted<>(new GammaFit(likelihood, peak.get()));
  }

  @Override
  public LifeDistribution distribution() {
    return LifeDistribution.GAMMA;
  }

  /** Without a unit. */
  public double shape() {
    return peak.shape();
  }

  /** In the unit of age. */
  public double scale() {
    return mean() / shape();
  }

  /** The mean age at the end, in the unit of age: shape times scale. */
  public double mean() {
    return Math.exp(likelihood.centre() - offsetOfMean);
  }

  @Override
  public double logLikelihood() {
    return peak.expansion().value();
  }

  @Override
  public double aic() {
    return 2 * PARAMETERS - 2 * logLikelihood();
  }

  /** What is left of the slope of the log likelihood by log shape, at the same mean: nearly 0. */
  public double slopeByLogShape() {
    return peak.shape() * aboutMean.byShape();
  }

  /** What is left of the slope of the log likelihood by log mean: nearly 0. */
  public double slopeByLogMean() {
    return -aboutMean.byOffset();
  }

  /** By the observed information in (log shape, log mean). */
  public double standardErrorOfLogShape() {
    return Math.sqrt(-aboutMean.byOffsetTwice() / aboutMean.determinant()) / peak.shape();
  }

  /** By the observed information in (log shape, log mean). */
  public double standardErrorOfLogMean() {
    return Math.sqrt(-aboutMean.byShapeTwice() / aboutMean.determinant());
  }

  /** By the observed information in (log shape, log mean); 0 for complete lives. */
  public double covarianceOfLogShapeAndLogMean() {
    return -aboutMean.byBoth() / (peak.shape() * aboutMean.determinant());
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
    if (age == 0) {
      return 0;
    }
    PlaneJet jet = new PlaneJet();
    new GammaAtShape(peak.shape())
        .logSurvival(Math.log(age) - likelihood.centre() + offsetOfMean, jet);
    return -jet.value;
  }
}
