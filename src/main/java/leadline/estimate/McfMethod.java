package leadline.estimate;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import leadline.stats.EventHistory;
import leadline.stats.Limits;
import leadline.stats.MeanCumulativeFunction;
import leadline.stats.MeanCumulativeFunction.Point;
import leadline.stats.NelsonVariance;

/** The mean number of recurrent failures per unit. */
final class McfMethod implements Method {

  /** Nelson's variance takes time with the square of their number, and is a comparison only. */
  private static final int MOST_TIMES_FOR_NELSON = 400;

  @Override
  public String word() {
    return "mcf";
  }

  @Override
  public List<String> prints() {
    return List.of("mcf.");
  }

  @Override
  public String reads() {
    return "unit,time,event[,start][,group]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<EventHistory> units = RecurrentUnit.of(file).stream().map(McfMethod::history).toList();
    List<Point> points = MeanCumulativeFunction.of(units).points();
    EstimateResults results =
        new EstimateResults()
            .numbers("mcf.time", points, Point::time)
            .numbers("mcf.n_risk", points, Point::atRisk)
            .numbers("mcf.n_event", points, Point::events)
            .numbers("mcf.mcf", points, Point::mean)
            .numbers("mcf.se_robust", points, point -> point.standardError().orElse(Double.NaN))
            .numbers("mcf.log_lo", points, limit(settings, Limits::lower))
            .numbers("mcf.log_hi", points, limit(settings, Limits::upper))
            .numbers("mcf.se_poisson", points, Point::poissonStandardError);
    if (units.size() < 2) {
      results.status("mcf.se_robust", EstimateResults.Status.INSUFFICIENT);
    }
    if (points.size() <= MOST_TIMES_FOR_NELSON) {
      NelsonVariance.standardErrors(units)
          .ifPresent(
              errors -> results.numbers("mcf.se_nelson_variant", errors, Double::doubleValue));
    }
    return results;
  }

  static EventHistory history(RecurrentUnit unit) {
    return new EventHistory(unit.start(), unit.end(), unit.failures());
  }

  private static ToDoubleFunction<Point> limit(
      EstimateSettings settings, Function<Limits, Double> limit) {
    return point -> point.limits(settings.confidence()).map(limit).orElse(Double.NaN);
  }
}
