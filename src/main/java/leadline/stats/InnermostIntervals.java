package leadline.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * The intervals to which a maximum-likelihood estimate confines all its mass: those from a lower
 * bound to an upper bound with no other bound between. Half-open (left, right], or a point where
 * left and right are equal. Source: Turnbull 1976, J. R. Stat. Soc. B 38:290; Peto 1973, Applied
 * Statistics 22:86.
 *
 * @param intervals in time order, at least one
 */
record InnermostIntervals(List<Interval> intervals) {

  /** The right end may be positive infinity. */
  record Interval(double left, double right) {
    boolean isPoint() {
      return left == right;
    }
  }

  /** At one time, a seen end stands before an upper bound, and an open lower bound after both. */
  private enum Bound {
    SEEN_END,
    UPPER,
    OPEN_LOWER
  }

  private record Mark(double time, Bound bound) {}

  static InnermostIntervals of(List<ObservedInterval> durations) {
    List<Mark> marks = new ArrayList<>();
    for (ObservedInterval duration : durations) {
      Bound lower = duration.isExact() ? Bound.SEEN_END : Bound.OPEN_LOWER;
      marks.add(new Mark(duration.lower(), lower));
      marks.add(new Mark(duration.upper(), Bound.UPPER));
    }
    marks.sort(Comparator.comparingDouble(Mark::time).thenComparing(Mark::bound));
    List<Interval> intervals = new ArrayList<>();
    for (int index = 1; index < marks.size(); index++) {
      Mark before = marks.get(index - 1);
      Mark mark = marks.get(index);
      if (before.bound() != Bound.UPPER && mark.bound() == Bound.UPPER) {
        intervals.add(new Interval(before.time(), mark.time()));
      }
    }
    return new InnermostIntervals(intervals);
  }

  int count() {
    return intervals.size();
  }

  Interval at(int index) {
    return intervals.get(index);
  }

  /** The first of those inside an observed interval; there is always one. */
  int firstWithin(ObservedInterval duration) {
    return countOf(
        interval ->
            interval.left() < duration.lower()
                || (interval.left() == duration.lower()
                    && interval.isPoint()
                    && !duration.isExact()));
  }

  /** The last of those inside an observed interval; there is always one. */
  int lastWithin(ObservedInterval duration) {
    return countOf(interval -> interval.right() <= duration.upper()) - 1;
  }

  /** How many from the first on; those are all before any of which it is untrue. */
  private int countOf(Predicate<Interval> leading) {
    int low = 0;
    int high = count();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (leading.test(at(middle))) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
