package leadline.estimate;

import leadline.stats.Confidence;
import leadline.stats.FitOutcome;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.KnownShapeFit;
import leadline.stats.LifeQuantity;

/** What is printed of a distribution with an assumed shape. */
final class KnownShapeResults {

  private KnownShapeResults() {}

  /** Of the exponential distribution, a shape of 1, whose scale is the mean. */
  static EstimateResults ofMean(KnownShapeFit fit, Confidence confidence) {
    EstimateResults results =
        new EstimateResults()
            .number("loglik", fit.logLikelihood())
            .number("aic", fit.aic())
            .number("slope_at_maximum", fit.slopeByLogScale())
            .number("se_mu", fit.standardErrorOfLogScale())
            .number("rate", 1 / fit.mean())
            .number("mean", fit.mean())
            .limits("mean_wald_log", fit.waldLimits(LifeQuantity.mean(), confidence))
            .limits("mean_lr", fit.profileLimits(LifeQuantity.mean(), confidence));
    fit.exactLimits(confidence).ifPresent(limits -> results.limits("mean_exact", limits));
    return results;
  }

  /** Of a Weibull distribution. */
  static EstimateResults ofScale(FitOutcome<KnownShapeFit> outcome, Confidence confidence) {
    if (outcome instanceof NoFiniteMaximum<KnownShapeFit> none) {
      return NoMaximumResults.of(none, "scale", confidence);
    }
    KnownShapeFit fit = outcome.fit().orElseThrow();
    EstimateResults results =
        new EstimateResults()
            .number("loglik", fit.logLikelihood())
            .number("scale", fit.scale())
            .number("b10", fit.estimate(LifeQuantity.quantile(0.1)))
            .limits("scale_lr", fit.profileLimits(LifeQuantity.scale(), confidence));
    for (Confidence level : NoMaximumResults.levels(confidence)) {
      results.number(
          "scale_lower" + NoMaximumResults.percent(level) + "_one_sided", fit.lowerLimit(level));
    }
    return results;
  }
}
