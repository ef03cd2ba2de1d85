package leadline.estimate;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All methods, in the order of the table that users read:
 *
 * <pre>
 * | METHOD | prints | reads |
 * |---|---|---|
 * | `kaplan-meier` | `km.*`, `na.*` (Nelson-Aalen); given an age reached, with the setting `conditional_on`; times by which the shares of the setting `quantiles` have ended, and the mean up to the setting `horizon` | life, exact or right-censored |
 * | `turnbull` | `npmle.*`; no other masses have a log-likelihood higher by more than `npmle.loglik_shortfall_at_most`; `npmle.F_actuarial` where all were inspected at common ages | life, any censoring, known from their start |
 * | `fit` | `exponential.*`, `weibull.*`, `lognormal.*`, `gamma.*`, `log_logistic.*`, `weibull_fixed_shape_B.*` for each B of the setting `fixed_shapes` | life, any censoring, delayed entry |
 * | `regression` | `regression.*`, a Weibull regression with proportional hazards: `.hazard_ratio` of each of `.covariates`, `.lr_p` of each of `.columns` | life, any censoring, delayed entry; the columns named by the setting `covariates`, else `group` and those whose name begins with `x_`; numbers, or words, each compared with the first |
 * | `fit-check` | `fit_check.FAMILY.statistic`, `.p`, `.p_se`: may the lives come from the distribution (parametric bootstrap of the distance from `turnbull`'s curve), for the settings `families`, `simulations`, `start` | life, any censoring, known from their start |
 * | `isotonic` | `isotonic.*` | life, each inspected once |
 * | `incidence` | `incidence.time`, `.surv`, `.by.CAUSE` (Aalen-Johansen) | `time,cause[,entry][,weight]` |
 * | `log-rank` | `logrank.*`, groups by name | life with group, exact or right-censored; within each `stratum`, if there is that column |
 * | `interval-log-rank` | `interval_logrank.*`, groups by name; `p` for large groups, `p_dealt` for any | life with group, any censoring, known from their start |
 * | `mcf` | `mcf.*` | recurrent |
 * | `trend` | `trend.*` (reverse arrangements), `laplace.*`, `mil.*` | recurrent |
 * | `power-law` | `crow.*` | recurrent |
 * | `rate` | `rate.*` (Garwood, mid-p), `mtbf.*` | counts |
 * | `proportion` | `clopper_pearson.*`, `wilson.*`, `mid_p.*` | pairs `x,n[,conf]` |
 * | `rate-ratio` | `ratio.*` | pairs `x1,t1,x2,t2` |
 * | `vessel-rates` | `pooled.*`, `homogeneity.*`, `poisson.*`, `overdispersion.*`, `shrunk.*` (for publication: mean and spread integrated out), `eb.*` (plug-in, for checking), `ms.*` (multi-sample; `ms_zero.*` by plain pooling where its variance came out negative) | counts with unit |
 * | `age-replacement` | `age.*` | costs |
 * | `block-replacement` | `block.*` | costs |
 * | `failure-finding` | `hidden.unavailability`, `hidden.interval_required` (exact; lambda tau / 2 overstates) | `shape,scale,interval[,tested][,required_unavailability]` |
 * | `spares` | `spares.mean`, `.hold`, `.assurance`, Poisson, for the setting `assurance` (0.95) | `mean` |
 * | `spares-uncertain-rate` | the same, negative binomial | `gamma_shape,gamma_exposure,exposure` |
 * | `spares-ageing` | the same, one demand of all rows, each part with its own chance | `shape,scale,age,ahead,weight` |
 * | `adjust-p` | `holm.p`, `bh.p` (Benjamini-Hochberg) | `p` |
 * </pre>
 */
public final class Methods {

  static final List<Method> ALL =
      List.of(
          new KaplanMeierMethod(),
          new TurnbullMethod(),
          new FitMethod(),
          new RegressionMethod(),
          new FitCheckMethod(),
          new IsotonicMethod(),
          new IncidenceMethod(),
          new LogRankMethod(),
          new IntervalLogRankMethod(),
          new McfMethod(),
          new TrendMethod(),
          new PowerLawMethod(),
          new RateMethod(),
          new ProportionMethod(),
          new RateRatioMethod(),
          new VesselRatesMethod(),
          new AgeReplacementMethod(),
          new BlockReplacementMethod(),
          new FailureFindingMethod(),
          new SparesMethod(),
          new SparesUncertainRateMethod(),
          new SparesAgeingMethod(),
          new AdjustPMethod());

  private Methods() {}

  /** The words of all methods. */
  public static List<String> words() {
    return ALL.stream().map(Method::word).toList();
  }

  /** One line for each method: its word, what it reads. */
  public static List<String> lines() {
    return ALL.stream()
        .map(method -> "  %-22s %s".formatted(method.word(), method.reads()))
        .toList();
  }

  /**
   * Runs a method on a file; the sets of one with a {@code set} column each apart, likewise the
   * groups of one with a {@code group} column unless the method compares them, the names of a
   * part's results beginning with the part's name and a dot.
   *
   * @throws UnusableData where there is no such method, or the file or the settings are of no use
   *     to it
   */
  public static EstimateResults run(String word, DataFile file, EstimateSettings settings) {
    Method method =
        named(word)
            .orElseThrow(
                () ->
                    new UnusableData(
                        "There is no method %s; there are %s."
                            .formatted(word, String.join(", ", words()))));
    return file.header().has(DataFile.SET)
        ? ofEach(file.by(DataFile.SET), part -> groupsOf(method, part, settings))
        : groupsOf(method, file, settings);
  }

  private static Optional<Method> named(String word) {
    return ALL.stream().filter(method -> method.word().equals(word)).findFirst();
  }

  private static EstimateResults groupsOf(Method method, DataFile file, EstimateSettings settings) {
    return switch (method.groups()) {
      case COMPARED -> method.of(file, settings);
      case APART ->
          file.header().has(DataFile.GROUP)
              ? ofEach(file.by(DataFile.GROUP), part -> method.of(part, settings))
              : method.of(file, settings);
    };
  }

  private static EstimateResults ofEach(Map<String, DataFile> parts, Estimator estimator) {
    EstimateResults all = new EstimateResults();
    parts.forEach((name, part) -> all.addAll(name + ".", estimator.of(part)));
    return all;
  }

  private interface Estimator {
    EstimateResults of(DataFile part);
  }
}
