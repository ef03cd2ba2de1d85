package leadline.stats;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The mean number of recurrent events per unit by each time: the sum of events over units observed
 * at their time. It supposes nothing of how events of a unit depend on each other, only that why a
 * unit is observed has nothing to do with them. Source: Nelson 1988, J. Quality Technology 20:24;
 * Lawless and Nadeau 1995, Technometrics 37:158.
 *
 * @param points in time order, one for each time at which an event happened
 */
public record MeanCumulativeFunction(List<Point> points) {

  /**
   * A step of the curve.
   *
   * @param time in the unit of the histories
   * @param atRisk units observed at the time: begun before, and not ended before
   * @param events at the time, 1 or more
   * @param mean events per unit up to the time, more than 0
   * @param standardError of the mean, robust: it stands whether or not events of a unit depend on
   *     each other; the root of the sum over units of the squared sum of (d_i - d/n) / n, with d_i
   *     of d events at each time while one of n observed (Lawless and Nadeau 1995). It may fall
   *     along time. Empty with one unit
   * @param poissonStandardError of the mean if events came independently (Nelson 1972): the root of
   *     the sum of d / n^2; too small where they do not
   */
  public record Point(
      double time,
      int atRisk,
      int events,
      double mean,
      OptionalDouble standardError,
      double poissonStandardError) {

    /**
     * Limits of the mean, normal on the scale of its logarithm and so above 0, approximate; empty
     * with one unit. Source: Nelson 2003, Recurrent Events Data Analysis, section 3.4.
     */
    public Optional<Limits> limits(Confidence confidence) {
      if (standardError.isEmpty()) {
        return Optional.empty();
      }
      double factor = Math.exp(confidence.normalQuantile() * standardError.getAsDouble() / mean);
      return Optional.of(new Limits(mean / factor, mean * factor));
    }
  }

  /** Makes the points unmodifiable. */
  public MeanCumulativeFunction {
    points = List.copyOf(points);
  }

  /** Of these units; one that had no event counts by having been observed. */
  public static MeanCumulativeFunction of(Collection<EventHistory> units) {
    List<UnitResiduals> residuals = units.stream().map(UnitResiduals::new).toList();
    List<Point> points = new ArrayList<>();
    double mean = 0;
    double poisson = 0;
    for (var step : eventsByTime(units).entrySet()) {
      double time = step.getKey();
      int events = step.getValue();
      int atRisk = (int) units.stream().filter(unit -> unit.isObservedAt(time)).count();
      mean += (double) events / atRisk;
      poisson += events / ((double) atRisk * atRisk);
      double share = (double) events / atRisk;
      double variance = residuals.stream().mapToDouble(one -> one.pass(time, share, atRisk)).sum();
      points.add(
          new Point(
              time,
              atRisk,
              events,
              mean,
              units.size() > 1 ? OptionalDouble.of(Math.sqrt(variance)) : OptionalDouble.empty(),
              Math.sqrt(poisson)));
    }
    return new MeanCumulativeFunction(points);
  }

  static NavigableMap<Double, Integer> eventsByTime(Collection<EventHistory> units) {
    NavigableMap<Double, Integer> events = new TreeMap<>();
    units.forEach(unit -> unit.events().forEach(time -> events.merge(time, 1, Integer::sum)));
    return events;
  }

  /** What a unit's events were above the mean of those observed, summed along time. */
  private static final class UnitResiduals {

    private final EventHistory unit;
    private int passed;
    private double sum;

    UnitResiduals(EventHistory unit) {
      this.unit = unit;
    }

    /** The squared sum up to a time that follows all passed before. */
    double pass(double time, double share, int atRisk) {
      int events = 0;
      while (passed < unit.events().size() && unit.events().get(passed) <= time) {
        passed++;
        events++;
      }
      sum += unit.isObservedAt(time) ? (events - share) / atRisk : 0;
      return sum * sum;
    }
  }
}
