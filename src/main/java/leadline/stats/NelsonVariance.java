package leadline.stats;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Nelson's unbiased variance of the mean cumulative function, for comparison with the robust one:
 * the sum over pairs of times k not after l of the covariance of events at both, among units
 * observed at both, divided by the number observed at k, pairs of different times twice. It may
 * come out negative. Source: Nelson 1995, Technometrics 37:147.
 */
public final class NelsonVariance {

  private NelsonVariance() {}

  /**
   * Standard errors in the order of {@link MeanCumulativeFunction#points()}, 0 where the variance
   * is negative; empty where fewer than two units are observed at a time of an event.
   */
  public static Optional<List<Double>> standardErrors(Collection<EventHistory> units) {
    List<Double> times = List.copyOf(MeanCumulativeFunction.eventsByTime(units).keySet());
    List<List<EventHistory>> observed =
        times.stream()
            .map(time -> units.stream().filter(unit -> unit.isObservedAt(time)).toList())
            .toList();
    if (observed.stream().anyMatch(atRisk -> atRisk.size() < 2)) {
      return Optional.empty();
    }
    List<Double> standardErrors = new ArrayList<>();
    double variance = 0;
    for (int later = 0; later < times.size(); later++) {
      for (int time = 0; time <= later; time++) {
        double covariance = covariance(observed.get(time), times.get(time), times.get(later));
        variance += (time == later ? 1 : 2) * covariance / observed.get(time).size();
      }
      standardErrors.add(Math.sqrt(Math.max(0, variance)));
    }
    return Optional.of(standardErrors);
  }

  /** With divisor one less than the units observed at both times; 0 of a single one. */
  private static double covariance(List<EventHistory> observed, double time, double later) {
    double products = 0;
    double events = 0;
    double laterEvents = 0;
    int units = 0;
    for (EventHistory unit : observed) {
      if (unit.isObservedAt(later)) {
        int count = count(unit, time);
        int laterCount = count(unit, later);
        products += (double) count * laterCount;
        events += count;
        laterEvents += laterCount;
        units++;
      }
    }
    return units < 2 ? 0 : (products - events * laterEvents / units) / (units - 1);
  }

  private static int count(EventHistory unit, double time) {
    int count = 0;
    for (double event : unit.events()) {
      count += event == time ? 1 : 0;
    }
    return count;
  }
}
