package leadline.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import leadline.estimate.EstimateResults.Status;
import leadline.stats.ChiSquared;
import leadline.stats.Confidence;
import leadline.stats.Limits;
import leadline.stats.RegressionOutcome;
import leadline.stats.RegressionOutcome.Collinear;
import leadline.stats.RegressionOutcome.Edge;
import leadline.stats.RegressionOutcome.Separated;
import leadline.stats.RegressionOutcome.Separation;
import leadline.stats.RegressionOutcome.WithoutMaximum;
import leadline.stats.RegressionQuantity;
import leadline.stats.WeibullRegression;

/** What is printed of a regression, or of why there is none. */
final class RegressionResults {

  private static final String NAME = "regression";

  private final EstimateResults results = new EstimateResults();
  private final List<CovariateColumn> columns;
  private final Confidence confidence;

  private RegressionResults(List<CovariateColumn> columns, Confidence confidence) {
    this.columns = columns;
    this.confidence = confidence;
    results.words(NAME + ".covariates", covariates());
  }

  static EstimateResults of(
      RegressionOutcome outcome, List<CovariateColumn> columns, Confidence confidence) {
    RegressionResults printed = new RegressionResults(columns, confidence);
    if (outcome instanceof WithoutMaximum without) {
      printed.results.addAll(NAME + ".", NoMaximumResults.of(without.none(), "scale", confidence));
    } else if (outcome instanceof Collinear collinear) {
      printed
          .without(Status.INSUFFICIENT, "collinear-covariates")
          .words(NAME + ".collinear", collinear.covariates());
    } else if (outcome instanceof Separated separated) {
      printed.addSeparated(separated);
    } else {
      outcome.regression().ifPresent(printed::addFit);
    }
    return printed.results;
  }

  private List<String> covariates() {
    return columns.stream().flatMap(column -> column.covariates().stream()).toList();
  }

  private EstimateResults without(Status status, String reason) {
    return results.status(NAME, status).word(NAME + ".reason", reason);
  }

  private void addSeparated(Separated separated) {
    without(Status.NO_FINITE_MAXIMUM, "separated-covariates")
        .words(
            NAME + ".separated", separated.effects().stream().map(Separation::covariate).toList())
        .words(
            NAME + ".separated_towards",
            separated.effects().stream().map(effect -> word(effect.towards())).toList());
    addTest("all", separated.all());
    for (Separation effect : separated.effects()) {
      for (Confidence level : NoMaximumResults.levels(confidence)) {
        effect
            .limit()
            .apply(level)
            .ifPresent(limit -> results.number(limitName(effect, level), limit));
      }
    }
  }

  private static String limitName(Separation effect, Confidence level) {
    String side =
        switch (effect.towards()) {
          case ZERO -> "upper";
          case INFINITY -> "lower";
        };
    return "%s.%s.hazard_ratio_%s%s_one_sided"
        .formatted(NAME, effect.covariate(), side, NoMaximumResults.percent(level));
  }

  private static String word(Edge edge) {
    return edge.name().toLowerCase(Locale.ROOT);
  }

  private void addFit(WeibullRegression fit) {
    results
        .number(NAME + ".loglik", fit.logLikelihood())
        .number(NAME + ".aic", fit.aic())
        .numbers(NAME + ".slope_at_maximum", fit.slopes(), Double::doubleValue);
    add("shape", RegressionQuantity.shape(), fit);
    add("scale", RegressionQuantity.scale(), fit);
    List<RegressionQuantity> ratios =
        fit.covariates().stream().map(RegressionQuantity::hazardRatio).toList();
    results
        .numbers(NAME + ".coefficient", ratios, fit::logarithm)
        .numbers(NAME + ".se_coefficient", ratios, fit::standardErrorOfLogarithm)
        .numbers(NAME + ".accelerated_coefficient", fit.covariates(), fit::acceleratedCoefficient)
        .numbers(NAME + ".hazard_ratio", ratios, fit::estimate);
    addLimits("wald", ratios, ratio -> fit.waldLimits(ratio, confidence));
    addLimits("lr", ratios, ratio -> fit.profileLimits(ratio, confidence));
    addTests(fit);
  }

  private void add(String name, RegressionQuantity quantity, WeibullRegression fit) {
    results
        .number(NAME + "." + name, fit.estimate(quantity))
        .limits(NAME + "." + name + "_wald_log", fit.waldLimits(quantity, confidence))
        .limits(NAME + "." + name + "_lr", fit.profileLimits(quantity, confidence));
  }

  private void addLimits(
      String kind, List<RegressionQuantity> ratios, Function<RegressionQuantity, Limits> limits) {
    List<Limits> each = ratios.stream().map(limits).toList();
    results
        .numbers(NAME + ".hazard_ratio_" + kind + "_lo", each, Limits::lower)
        .numbers(NAME + ".hazard_ratio_" + kind + "_hi", each, Limits::upper);
  }

  /** Of each column, all covariates made from it together, and of all columns. */
  private void addTests(WeibullRegression fit) {
    List<ChiSquared> tests = new ArrayList<>();
    columns.forEach(column -> tests.add(fit.test(column.covariates())));
    results
        .words(NAME + ".columns", columns.stream().map(CovariateColumn::name).toList())
        .numbers(NAME + ".lr_chi2", tests, ChiSquared::statistic)
        .numbers(NAME + ".lr_df", tests, ChiSquared::degreesOfFreedom)
        .numbers(NAME + ".lr_p", tests, ChiSquared::upperTail);
    addTest("all", fit.test(fit.covariates()));
  }

  private void addTest(String name, ChiSquared test) {
    results
        .number(NAME + "." + name + "_chi2", test.statistic())
        .number(NAME + "." + name + "_df", test.degreesOfFreedom())
        .number(NAME + "." + name + "_p", test.upperTail());
  }
}
