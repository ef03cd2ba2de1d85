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
    return new EstimateResults()
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
