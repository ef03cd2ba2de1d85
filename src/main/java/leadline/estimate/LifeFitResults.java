package leadline.estimate;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import leadline.stats.Confidence;
import leadline.stats.FittedLife;
import leadline.stats.GammaFit;
import leadline.stats.LifeFamily;
import leadline.stats.LifeFit;
import leadline.stats.LifeQuantity;
import leadline.stats.Limits;

/** What is printed of a distribution whose shape was fitted too. */
final class LifeFitResults {

  private static final Map<String, Double> SHARES =
      new TreeMap<>(Map.of("b5", 0.05, "b10", 0.1, "b50", 0.5));

  private final FittedLife fit;
  private final Confidence confidence;
  private final EstimateResults results = new EstimateResults();

  private LifeFitResults(FittedLife fit, Confidence confidence) {
    this.fit = fit;
    this.confidence = confidence;
  }

  static EstimateResults of(FittedLife fit, EstimateSettings settings) {
    return new LifeFitResults(fit, settings.confidence()).all(settings);
  }

  private EstimateResults all(EstimateSettings settings) {
    results.number("loglik", fit.logLikelihood()).number("aic", fit.aic());
    if (fit instanceof LifeFit ofLogAge) {
      results
          .numbers("slope_at_maximum", ofLogAge.slopeByMu(), ofLogAge.slopeByLogSigma())
          .number("se_mu", ofLogAge.standardErrorOfMu())
          .number("se_log_sigma", ofLogAge.standardErrorOfLogSigma())
          .number("cov_mu_log_sigma", ofLogAge.covarianceOfMuAndLogSigma());
    } else if (fit instanceof GammaFit gamma) {
      results
          .numbers("slope_at_maximum", gamma.slopeByLogMean(), gamma.slopeByLogShape())
          .number("se_log_mean", gamma.standardErrorOfLogMean())
          .number("se_log_shape", gamma.standardErrorOfLogShape())
          .number("cov_log_mean_log_shape", gamma.covarianceOfLogShapeAndLogMean());
    }
    addParameters();
    SHARES.forEach((name, share) -> add(name, LifeQuantity.quantile(share)));
    add("mean", LifeQuantity.mean());
    addAtAges(settings);
    return results;
  }

  private void addParameters() {
    if (fit instanceof LifeFit lognormal && lognormal.family() == LifeFamily.LOGNORMAL) {
      results.number("mu", lognormal.mu());
      add("sigma", LifeQuantity.sigma());
      add("median", LifeQuantity.scale());
    } else {
      add("shape", LifeQuantity.shape());
      add("scale", LifeQuantity.scale());
    }
  }

  private void addAtAges(EstimateSettings settings) {
    List<Double> ages = positive(settings, Setting.SURVIVAL_AT);
    addEach("survival", ages.stream().map(LifeQuantity::survivalAt).toList());
    settings
        .number(Setting.NEXT_HOURS)
        .ifPresent(
            hours -> {
              positive(settings, Setting.NEXT_HOURS);
              addEach(
                  "failure_in_next_hours",
                  ages.stream().map(age -> LifeQuantity.failureWithin(hours, age)).toList());
            });
  }

  private static List<Double> positive(EstimateSettings settings, Setting setting) {
    List<Double> numbers = settings.numbers(setting).orElse(List.of());
    if (numbers.stream().anyMatch(number -> !(number > 0))) {
      throw settings.unusable(setting, "must be more than 0");
    }
    return numbers;
  }

  private void add(String name, LifeQuantity quantity) {
    results
        .number(name, fit.estimate(quantity))
        .limits(name + "_wald_log", fit.waldLimits(quantity, confidence))
        .limits(name + "_lr", fit.profileLimits(quantity, confidence));
  }

  private void addEach(String name, List<LifeQuantity> quantities) {
    if (quantities.isEmpty()) {
      return;
    }
    List<Limits> wald =
        quantities.stream().map(quantity -> fit.waldLimits(quantity, confidence)).toList();
    List<Limits> profile =
        quantities.stream().map(quantity -> fit.profileLimits(quantity, confidence)).toList();
    results.numbers(name, quantities, (ToDoubleFunction<LifeQuantity>) fit::estimate);
    results
        .numbers(name + "_wald_lo", wald, Limits::lower)
        .numbers(name + "_wald_hi", wald, Limits::upper)
        .numbers(name + "_lr_lo", profile, Limits::lower)
        .numbers(name + "_lr_hi", profile, Limits::upper);
  }
}
