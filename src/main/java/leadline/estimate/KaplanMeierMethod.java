package leadline.estimate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import leadline.stats.Confidence;
import leadline.stats.KaplanMeier;
import leadline.stats.Limits;
import leadline.stats.NelsonAalen;
import leadline.stats.ObservedTime;
import leadline.stats.RestrictedMean;
import leadline.stats.SurvivalPoint;
import leadline.stats.SurvivalTally;

/** Survival and cumulative hazard of lives whose ends are known exactly or lie beyond a time. */
final class KaplanMeierMethod implements Method {

  /** All ends are alike. */
  private static final String END = "end";

  @Override
  public String word() {
    return "kaplan-meier";
  }

  @Override
  public List<String> prints() {
    return List.of("km.", "na.");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight; no intervals";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    SurvivalTally<String> tally = tally(file, settings);
    Confidence confidence = settings.confidence();
    KaplanMeier curve = KaplanMeier.of(tally);
    List<SurvivalPoint> points = curve.points();
    List<NelsonAalen.Point> hazard = NelsonAalen.of(tally).points();
    Function<SurvivalPoint, Optional<Limits>> plain = point -> point.plainLimits(confidence);
    Function<SurvivalPoint, Optional<Limits>> logLog = point -> point.logLogLimits(confidence);
    EstimateResults results =
        new EstimateResults()
            .numbers("km.time", points, SurvivalPoint::time)
            .numbers("km.n_risk", points, SurvivalPoint::atRisk)
            .numbers("km.n_event", points, SurvivalPoint::events)
            .numbers("km.surv", points, SurvivalPoint::survival)
            .numbers("km.se_greenwood", points, point -> point.standardError().orElse(Double.NaN))
            .numbers("km.loglog_lo", points, limit(logLog, Limits::lower))
            .numbers("km.loglog_hi", points, limit(logLog, Limits::upper))
            .numbers("km.plain_lo", points, limit(plain, Limits::lower))
            .numbers("km.plain_hi", points, limit(plain, Limits::upper))
            .number("km.median_first", curve.median().orElse(Double.POSITIVE_INFINITY))
            .number("km.median_R", curve.medianAtMidpoint().orElse(Double.POSITIVE_INFINITY))
            .numbers("na.cumhaz", hazard, NelsonAalen.Point::cumulativeHazard)
            .numbers("na.var_poisson", hazard, NelsonAalen.Point::variance);
    addQuantiles(results, curve, settings);
    addRestrictedMean(results, curve, settings);
    return results;
  }

  private static void addQuantiles(
      EstimateResults results, KaplanMeier curve, EstimateSettings settings) {
    List<Double> shares = settings.numbers(Setting.QUANTILES).orElse(List.of());
    if (shares.stream().anyMatch(share -> !(share > 0 && share < 1))) {
      throw settings.unusable(Setting.QUANTILES, "must be more than 0 and less than 1");
    }
    if (shares.isEmpty()) {
      return;
    }
    Function<Double, Optional<Limits>> limits =
        share -> curve.quantileLimits(share, settings.confidence());
    results
        .numbers(
            "km.quantile", shares, share -> curve.quantile(share).orElse(Double.POSITIVE_INFINITY))
        .numbers(
            "km.quantile_loglog_lo",
            shares,
            share -> limits.apply(share).map(Limits::lower).orElse(Double.NaN))
        .numbers(
            "km.quantile_loglog_hi",
            shares,
            share -> limits.apply(share).map(Limits::upper).orElse(Double.NaN));
  }

  private static void addRestrictedMean(
      EstimateResults results, KaplanMeier curve, EstimateSettings settings) {
    OptionalDouble horizon = settings.number(Setting.HORIZON);
    if (horizon.isEmpty()) {
      return;
    }
    if (!(horizon.getAsDouble() > 0)) {
      throw settings.unusable(Setting.HORIZON, "must be more than 0");
    }
    Optional<RestrictedMean> mean = curve.restrictedMean(horizon.getAsDouble());
    Optional<Limits> limits = mean.flatMap(found -> found.logitLimits(settings.confidence()));
    results
        .number("km.restricted_mean", mean.map(RestrictedMean::mean).orElse(Double.NaN))
        .number("km.restricted_mean_se", mean.map(RestrictedMean::standardError).orElse(Double.NaN))
        .number("km.restricted_mean_logit_lo", limits.map(Limits::lower).orElse(Double.NaN))
        .number("km.restricted_mean_logit_hi", limits.map(Limits::upper).orElse(Double.NaN));
  }

  private static ToDoubleFunction<SurvivalPoint> limit(
      Function<SurvivalPoint, Optional<Limits>> limits, Function<Limits, Double> limit) {
    return point -> limits.apply(point).map(limit).orElse(Double.NaN);
  }

  private static SurvivalTally<String> tally(DataFile file, EstimateSettings settings) {
    OptionalDouble reached = settings.number(Setting.CONDITIONAL_ON);
    if (reached.orElse(0) < 0) {
      throw settings.unusable(Setting.CONDITIONAL_ON, "must be 0 or more");
    }
    SurvivalTally<String> tally = new SurvivalTally<>();
    for (LifeRow life : LifeRow.of(file)) {
      long count = life.row().count("weight");
      if (reached.isEmpty()) {
        tally.add(observed(life, life.entry()), count);
      } else if (life.lower() > reached.getAsDouble()) {
        double entry = Math.max(life.entry().orElse(0), reached.getAsDouble());
        tally.add(observed(life, OptionalDouble.of(entry)), count);
      }
    }
    return tally;
  }

  static ObservedTime<String> observed(LifeRow life, OptionalDouble entry) {
    if (!life.isExact() && !life.isRightCensored()) {
      throw life.row().impossible("upper", "this method takes exact and right-censored lives only");
    }
    ObservedTime<String> observed =
        life.isExact()
            ? ObservedTime.ended(life.lower(), END)
            : ObservedTime.censored(life.lower());
    return entry.isEmpty() ? observed : observed.enteredAt(entry.getAsDouble());
  }
}
