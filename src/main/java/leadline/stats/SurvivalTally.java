package leadline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Counts of observed durations by time: all that survival curves need to know. Counts add up
 * exactly, so tallies may be split and merged in any order with the same result. Not safe for use
 * by several threads at once.
 *
 * @param <C> what may end a duration
 */
public final class SurvivalTally<C extends Comparable<? super C>> {

  private final NavigableMap<Double, NavigableMap<C, Long>> ended = new TreeMap<>();
  private final NavigableMap<Double, Long> exits = new TreeMap<>();
  private final NavigableMap<Double, Long> delayedEntries = new TreeMap<>();
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
    double time = withoutNegativeZero(observed.time());
    exits.merge(time, count, Math::addExact);
    if (observed instanceof ObservedTime.Ended<C> end) {
      ended
          .computeIfAbsent(time, none -> new TreeMap<>())
          .merge(end.cause(), count, Math::addExact);
    }
    if (observed.entry().isPresent()) {
      double entry = withoutNegativeZero(observed.entry().getAsDouble());
      delayedEntries.merge(entry, count, Math::addExact);
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
    other.ended.forEach(
        (time, causes) ->
            mergeCounts(ended.computeIfAbsent(time, none -> new TreeMap<>()), causes));
    mergeCounts(exits, other.exits);
    mergeCounts(delayedEntries, other.delayedEntries);
    watchedFromStart = Math.addExact(watchedFromStart, other.watchedFromStart);
  }

  /** The last time at which any duration was seen; empty if none was added. */
  OptionalDouble lastTime() {
    return exits.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(exits.lastKey());
  }

  /** In time order, one for each time at which a duration ended. */
  List<RiskSet<C>> riskSets() {
    return riskSetsAt(endTimes());
  }

  /** The times at which a duration ended. */
  NavigableSet<Double> endTimes() {
    return ended.navigableKeySet();
  }

  /** One for each of these times, whether or not a duration ended then. */
  List<RiskSet<C>> riskSetsAt(NavigableSet<Double> times) {
    NavigableMap<Double, Long> entering = new TreeMap<>(delayedEntries);
    NavigableMap<Double, Long> leaving = new TreeMap<>(exits);
    List<RiskSet<C>> sets = new ArrayList<>();
    long atRisk = watchedFromStart;
    for (double time : times) {
      atRisk += takeBefore(time, entering) - takeBefore(time, leaving);
      NavigableMap<C, Long> none = new TreeMap<>();
      sets.add(new RiskSet<>(time, atRisk, ended.getOrDefault(time, none)));
    }
    return sets;
  }

  private static long takeBefore(double time, NavigableMap<Double, Long> counts) {
    long taken = 0;
    while (!counts.isEmpty() && counts.firstKey() < time) {
      taken += counts.pollFirstEntry().getValue();
    }
    return taken;
  }

  private static <K> void mergeCounts(NavigableMap<K, Long> into, NavigableMap<K, Long> from) {
    from.forEach((key, count) -> into.merge(key, count, Math::addExact));
  }

  /** Because a sorted map holds 0.0 and -0.0 to be two keys. */
  private static double withoutNegativeZero(double time) {
    return time + 0.0;
  }
}
