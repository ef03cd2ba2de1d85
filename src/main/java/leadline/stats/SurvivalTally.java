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
   * @throws ArithmeticException if the counts overflow
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
   * @throws ArithmeticException if the counts overflow
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
  NavigableMap<C, CountsByTime> endedBy() {
    NavigableMap<C, CountsByTime> copy = new TreeMap<>();
    endedBy.forEach((cause, counts) -> copy.put(cause, counts.copy()));
    return copy;
  }

  /** In time order, one for each time at which a duration ended. */
  List<RiskSet> riskSets() {
    return riskSetsAt(endTimes());
  }

  /** The times at which a duration ended, in order. */
  double[] endTimes() {
    return endedBy.values().stream()
        .map(CountsByTime::times)
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
    List<RiskSet> sets = new ArrayList<>(times.length);
    double[] entering = delayedEntries.times();
    double[] leaving = exits.times();
    int entered = 0;
    int left = 0;
    long atRisk = watchedFromStart;
    for (double time : times) {
      while (entered < entering.length && entering[entered] < time) {
        atRisk += delayedEntries.at(entering[entered++]);
      }
      while (left < leaving.length && leaving[left] < time) {
        atRisk -= exits.at(leaving[left++]);
      }
      sets.add(new RiskSet(time, atRisk, events(time)));
    }
    return sets;
  }

  private long events(double time) {
    long events = 0;
    for (CountsByTime counts : endedBy.values()) {
      events += counts.at(time);
    }
    return events;
  }
}
