package leadline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.DoubleStream;

/**
 * Counts of observed durations by time: all that survival curves need to know. Counts add up
 * exactly, so tallies may be split and merged in any order with the same result. Not safe for use
 * by several threads at once.
 *
 * @param <C> what may end a duration
 */
public final class SurvivalTally<C extends Comparable<? super C>> {

  private final NavigableMap<C, CountsByTime> endedBy = new TreeMap<>();
  private final CountsByTime exits = new CountsByTime();
  private final CountsByTime delayedEntries = new CountsByTime();
  private long watchedFromStart;

  /**
   * Counts so many durations that look alike.
   *
   * @param count 1 or more
   * @throws IllegalArgumentException if the count is less than 1
   * @throws ArithmeticException if the counts of those watched from their start overflow
   */
  public void add(ObservedTime<C> observed, long count) {
    if (count < 1) {
      throw new IllegalArgumentException("a count must be 1 or more: " + count);
    }
    exits.add(observed.time(), count);
    if (observed instanceof ObservedTime.Ended<C> end) {
      countsOf(end.cause()).add(end.time(), count);
    }
    if (observed.entry().isPresent()) {
      delayedEntries.add(observed.entry().getAsDouble(), count);
    } else {
      watchedFromStart = Math.addExact(watchedFromStart, count);
    }
  }

  /**
   * Counts all that the other has counted; the other stays as it is.
   *
   * @throws ArithmeticException if the counts of those watched from their start overflow
   */
  public void merge(SurvivalTally<C> other) {
    other.endedBy.forEach((cause, counts) -> countsOf(cause).addAll(counts));
    exits.addAll(other.exits);
    delayedEntries.addAll(other.delayedEntries);
    watchedFromStart = Math.addExact(watchedFromStart, other.watchedFromStart);
  }

  private CountsByTime countsOf(C cause) {
    return endedBy.computeIfAbsent(cause, none -> new CountsByTime());
  }

  /** The last time at which any duration was seen; empty if none was added. */
  OptionalDouble lastTime() {
    return exits.last();
  }

  /** How many each cause has ended so far. */
  NavigableMap<C, CountsByTime.InOrder> endedBy() {
    NavigableMap<C, CountsByTime.InOrder> inOrder = new TreeMap<>();
    endedBy.forEach((cause, counts) -> inOrder.put(cause, counts.inOrder()));
    return inOrder;
  }

  /** In time order, one for each time at which a duration ended. */
  List<RiskSet> riskSets() {
    NavigableMap<C, CountsByTime.InOrder> endedInOrder = endedBy();
    return riskSetsAt(timesOf(endedInOrder), endedInOrder);
  }

  /** The times at which a duration ended, in order. */
  double[] endTimes() {
    return timesOf(endedBy());
  }

  private static double[] timesOf(NavigableMap<?, CountsByTime.InOrder> endedBy) {
    return endedBy.values().stream()
        .map(CountsByTime.InOrder::times)
        .reduce(SurvivalTally::merged)
        .orElse(new double[0]);
  }

  /** Of two rising series, each number once. */
  static double[] merged(double[] one, double[] other) {
    return DoubleStream.concat(Arrays.stream(one), Arrays.stream(other))
        .sorted()
        .distinct()
        .toArray();
  }

  /**
   * One for each of these times, whether or not a duration ended then.
   *
   * @param times in order
   */
  List<RiskSet> riskSetsAt(double[] times) {
    return riskSetsAt(times, endedBy());
  }

  private List<RiskSet> riskSetsAt(
      double[] times, NavigableMap<C, CountsByTime.InOrder> endedInOrder) {
    List<RiskSet> sets = new ArrayList<>(times.length);
    CountsByTime.Walk entering = delayedEntries.inOrder().walk();
    CountsByTime.Walk leaving = exits.inOrder().walk();
    List<CountsByTime.Walk> ending =
        endedInOrder.values().stream().map(CountsByTime.InOrder::walk).toList();
    long atRisk = watchedFromStart;
    for (double time : times) {
      atRisk += entering.before(time) - leaving.before(time);
      long events = 0;
      for (CountsByTime.Walk cause : ending) {
        events += cause.at(time);
      }
      sets.add(new RiskSet(time, atRisk, events));
    }
    return sets;
  }
}
