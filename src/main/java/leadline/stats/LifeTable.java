package leadline.stats;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The life-table estimate for durations inspected at common times: of those known to go on at the
 * beginning of an interval, and seen at its end, so many ended in it. Where it applies, it is the
 * nonparametric maximum-likelihood estimate in closed form. Source: Meeker and Escobar 1998,
 * Statistical Methods for Reliability Data, section 3.3.
 */
public final class LifeTable {

  /**
   * The end of an interval in which some ended.
   *
   * @param time in the unit of the durations
   * @param endedBy the share that ended by the time, more than 0, at most 1
   */
  public record Point(double time, double endedBy) {}

  private LifeTable() {}

  /**
   * In time order; empty unless ends lie in intervals that nowhere overlap, and none is
   * right-censored inside one of them, or there is no such interval.
   */
  public static Optional<List<Point>> points(Collection<ObservedInterval> durations) {
    TreeSet<Double> lowers = new TreeSet<>();
    TreeSet<Double> uppers = new TreeSet<>();
    for (ObservedInterval duration : durations) {
      if (!duration.isRightCensored()) {
        lowers.add(duration.lower());
        uppers.add(duration.upper());
      }
    }
    return lowers.isEmpty() || !durations.stream().allMatch(one -> fits(one, lowers, uppers))
        ? Optional.empty()
        : Optional.of(table(durations, List.copyOf(lowers), List.copyOf(uppers)));
  }

  /** Whether no interval begins or ends within the duration's own, and it lies within none. */
  private static boolean fits(
      ObservedInterval duration, NavigableSet<Double> lowers, NavigableSet<Double> uppers) {
    Double begun = lowers.lower(duration.isRightCensored() ? duration.lower() : duration.upper());
    if (duration.isRightCensored()) {
      return begun == null || uppers.higher(begun) <= duration.lower();
    }
    return !duration.isExact()
        && begun == duration.lower()
        && uppers.higher(duration.lower()) == duration.upper();
  }

  private static List<Point> table(
      Collection<ObservedInterval> durations, List<Double> lowers, List<Double> uppers) {
    List<Point> points = new ArrayList<>();
    double surviving = 1;
    for (int index = 0; index < lowers.size(); index++) {
      double lower = lowers.get(index);
      double upper = uppers.get(index);
      double atRisk = 0;
      double ended = 0;
      for (ObservedInterval duration : durations) {
        atRisk += isAtRisk(duration, lower, upper) ? duration.weight() : 0;
        ended += duration.upper() == upper ? duration.weight() : 0;
      }
      surviving *= 1 - ended / atRisk;
      points.add(new Point(upper, 1 - surviving));
    }
    return List.copyOf(points);
  }

  private static boolean isAtRisk(ObservedInterval duration, double lower, double upper) {
    return duration.lower() >= (duration.isRightCensored() ? upper : lower);
  }
}
