package leadline.stats;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The share that had failed by each age, of things inspected once each: the found shares of
 * inspections at an age, pooled where they fall. It is the nonparametric maximum-likelihood
 * estimate. Source: Ayer, Brunk, Ewing, Reid and Silverman 1955, Ann. Math. Stat. 26:641.
 */
public final class CurrentStatus {

  /**
   * All inspections at one age.
   *
   * @param age in the caller's unit
   * @param inspected weight of those inspected, more than 0
   * @param failed weight of those found failed, 0 to {@code inspected}
   * @param failedBy the estimated share failed by the age, 0 to 1, never less than at a lower age
   */
  public record Point(double age, double inspected, double failed, double failedBy) {}

  private record Count(double inspected, double failed) {
    Count plus(Count other) {
      return new Count(inspected + other.inspected, failed + other.failed);
    }
  }

  private CurrentStatus() {}

  /**
   * One point for each age of inspection, in order; none of no duration.
   *
   * @param durations each either left-censored, (0, age], or right-censored at the age
   * @throws IllegalArgumentException if one is neither
   */
  public static List<Point> points(Collection<ObservedInterval> durations) {
    NavigableMap<Double, Count> counts = new TreeMap<>();
    durations.stream()
        .sorted(Comparator.comparingDouble(ObservedInterval::weight))
        .forEach(duration -> counts.merge(age(duration), count(duration), Count::plus));
    List<Count> inOrder = List.copyOf(counts.values());
    double[] fitted =
        IsotonicRegression.fit(
            inOrder.stream().mapToDouble(count -> count.failed() / count.inspected()).toArray(),
            inOrder.stream().mapToDouble(Count::inspected).toArray());
    List<Point> points = new ArrayList<>();
    counts.forEach(
        (age, count) ->
            points.add(new Point(age, count.inspected(), count.failed(), fitted[points.size()])));
    return List.copyOf(points);
  }

  private static double age(ObservedInterval duration) {
    if (duration.isRightCensored()) {
      return duration.lower();
    }
    if (duration.isExact() || duration.lower() > 0) {
      throw new IllegalArgumentException("neither left- nor right-censored: " + duration);
    }
    return duration.upper();
  }

  private static Count count(ObservedInterval duration) {
    return new Count(duration.weight(), duration.isRightCensored() ? 0 : duration.weight());
  }
}
