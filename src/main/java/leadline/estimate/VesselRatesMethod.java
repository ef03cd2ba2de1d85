package leadline.estimate;

import java.util.List;
import leadline.stats.Confidence;
import leadline.stats.GammaPoisson;
import leadline.stats.IntegratedShrinkage;
import leadline.stats.Limits;
import leadline.stats.MultiSampleRate;
import leadline.stats.PoissonRate;
import leadline.stats.RateSample;

/** How rates differ between units, and what is known of each one's. */
final class VesselRatesMethod implements Method {

  @Override
  public String word() {
    return "vessel-rates";
  }

  @Override
  public List<String> prints() {
    return List.of(
        "pooled.",
        "homogeneity.",
        "poisson.",
        "overdispersion.",
        "eb.",
        "ms.",
        "ms_zero.",
        "shrunk.");
  }

  @Override
  public String reads() {
    return "failures,exposure[,unit]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<PoissonRate> rates = CountRow.of(file).stream().map(CountRow::rate).toList();
    RateSample sample = new RateSample(rates);
    Confidence confidence = settings.confidence();
    EstimateResults results =
        new EstimateResults()
            .number("pooled.rate", sample.pooled().rate())
            .number("homogeneity.chi2", sample.chiSquared())
            .number("homogeneity.df", sample.degreesOfFreedom())
            .number("homogeneity.p", sample.homogeneity())
            .number("poisson.loglik", sample.poissonLogLikelihood())
            .number("overdispersion.score", sample.overdispersionScore());
    addShrunk(sample, confidence, results);
    addPlugIn(sample, confidence, results);
    addMultiSample(sample, results);
    return results;
  }

  private static void addShrunk(RateSample sample, Confidence confidence, EstimateResults results) {
    IntegratedShrinkage shrinkage = IntegratedShrinkage.of(sample);
    List<Limits> limits =
        sample.rates().stream().map(unit -> shrinkage.limits(unit, confidence)).toList();
    results
        .numbers("shrunk.mean", sample.rates(), shrinkage::mean)
        .numbers("shrunk.lo", limits, Limits::lower)
        .numbers("shrunk.hi", limits, Limits::upper);
  }

  private static void addPlugIn(RateSample sample, Confidence confidence, EstimateResults results) {
    GammaPoisson.fit(sample)
        .ifPresentOrElse(
            prior -> addPrior(prior, sample, confidence, results),
            () -> addCommonRate(sample, results));
  }

  private static void addPrior(
      GammaPoisson prior, RateSample sample, Confidence confidence, EstimateResults results) {
    List<GammaPoisson> posteriors = sample.rates().stream().map(prior::after).toList();
    double ratio = 2 * (prior.logLikelihood(sample) - sample.poissonLogLikelihood());
    results
        .word("eb.status", "ok")
        .number("eb.alpha", prior.shape())
        .number("eb.beta", prior.exposure())
        .number("eb.prior_mean", prior.mean())
        .number("eb.prior_sd", prior.standardDeviation())
        .number("eb.loglik", prior.logLikelihood(sample))
        .numbers("eb.posterior_mean", posteriors, GammaPoisson::mean)
        .numbers("eb.posterior_lo", posteriors, unit -> unit.limits(confidence).lower())
        .numbers("eb.posterior_hi", posteriors, unit -> unit.limits(confidence).upper())
        .number("eb.lrt", ratio)
        .number("eb.lrt_p", GammaPoisson.chanceOfLikelihoodRatio(ratio));
  }

  /** The spread between units is estimated to be 0: each has the pooled rate. */
  private static void addCommonRate(RateSample sample, EstimateResults results) {
    if (sample.pooled().events() == 0) {
      results.status("eb", EstimateResults.Status.INSUFFICIENT);
      return;
    }
    results
        .status("eb", EstimateResults.Status.BOUNDARY)
        .number("eb.prior_mean", sample.pooled().rate())
        .number("eb.prior_sd", 0)
        .number("eb.loglik", sample.poissonLogLikelihood())
        .numbers("eb.posterior_mean", sample.rates(), unit -> sample.pooled().rate());
  }

  private static void addMultiSample(RateSample sample, EstimateResults results) {
    MultiSampleRate.of(sample)
        .ifPresentOrElse(
            rate -> addMultiSample(rate, results),
            () -> results.status("ms", EstimateResults.Status.INSUFFICIENT));
  }

  private static void addMultiSample(MultiSampleRate rate, EstimateResults results) {
    results
        .number("ms.theta1_pooled", rate.pooled())
        .number("ms.V", rate.dispersion())
        .number("ms.sigma2_moment", rate.moment())
        .truth("ms.fallback_used", rate.fallback());
    addSpread("ms", rate, results);
    if (rate.fallback()) {
      addSpread("ms_zero", rate.withoutSpread(), results);
    }
  }

  private static void addSpread(String prefix, MultiSampleRate rate, EstimateResults results) {
    Limits range = rate.ninetyPercentRange();
    results
        .number(prefix + ".mean", rate.mean())
        .number(prefix + ".sd", Math.sqrt(rate.variance()))
        .number(prefix + ".gamma_alpha", rate.gammaShape())
        .number(prefix + ".gamma_beta", rate.gammaExposure())
        .number(prefix + ".lower90", range.lower())
        .number(prefix + ".upper90", range.upper());
  }
}
