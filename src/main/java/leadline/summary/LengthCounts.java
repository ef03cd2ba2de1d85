package leadline.summary;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import leadline.quantity.RunningHours;

/** How many intervals had each length. */
record LengthCounts(SortedMap<RunningHours, Long> byLength) implements Counts<LengthCounts> {

  static final LengthCounts NONE = new LengthCounts(new TreeMap<>());

  static Collector<RunningHours, ?, LengthCounts> collector() {
    return Collectors.collectingAndThen(
        Collectors.groupingBy(length -> length, TreeMap::new, Collectors.counting()),
        LengthCounts::new);
  }

  @Override
  public LengthCounts plus(LengthCounts other) {
    SortedMap<RunningHours, Long> sum = new TreeMap<>(byLength);
    other.byLength.forEach((length, count) -> sum.merge(length, count, Long::sum));
    return new LengthCounts(sum);
  }

  long count() {
    return byLength.values().stream().mapToLong(Long::longValue).sum();
  }

  /** All intervals laid end to end. */
  RunningHours together() {
    return byLength.entrySet().stream()
        .map(entry -> entry.getKey().times(entry.getValue()))
        .reduce(RunningHours.ZERO, RunningHours::plus);
  }
}
