package leadline.stats;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * How many durations there are at each time. They are kept as they come and put in order when asked
 * for: sorting a million numbers takes a fraction of what keeping them sorted does.
 */
final class CountsByTime {

  /** The same, each time once and in order. */
  static final class InOrder {

    private final double[] times;
    private final long[] counts;

    private InOrder(double[] times, long[] counts) {
      this.times = times;
      this.counts = counts;
    }

    double[] times() {
      return times.clone();
    }

    /** 0 where nothing was added. */
    long at(double time) {
      int index = Arrays.binarySearch(times, time);
      return index < 0 ? 0 : counts[index];
    }

    Walk walk() {
      return new Walk(this);
    }
  }

  /** From the earliest time on. */
  static final class Walk {

    private final InOrder counts;
    private int next;

    private Walk(InOrder counts) {
      this.counts = counts;
    }

    /** Since the time last asked for, and before this later one. */
    long before(double time) {
      long passed = 0;
      while (next < counts.times.length && counts.times[next] < time) {
        passed += counts.counts[next++];
      }
      return passed;
    }

    /** At this time, everything before having been passed. */
    long at(double time) {
      before(time);
      return next < counts.times.length && counts.times[next] == time ? counts.counts[next] : 0;
    }
  }

  private double[] times = new double[16];
  private long[] counts = new long[16];
  private int size;

  /**
   * @param time 0 or more
   * @param count 1 or more
   */
  void add(double time, long count) {
    if (size == times.length) {
      times = Arrays.copyOf(times, 2 * size);
      counts = Arrays.copyOf(counts, 2 * size);
    }
    times[size] = time + 0.0;
    counts[size++] = count;
  }

  void addAll(CountsByTime other) {
    for (int index = 0; index < other.size; index++) {
      add(other.times[index], other.counts[index]);
    }
  }

  /** The latest time; empty if nothing was added. */
  OptionalDouble last() {
    return Arrays.stream(times, 0, size).max();
  }

  /**
   * @throws ArithmeticException if the count at a time overflows
   */
  InOrder inOrder() {
    double[] inOrder = Arrays.copyOf(times, size);
    Arrays.sort(inOrder);
    long[] sums = new long[size];
    int distinct = 0;
    for (int index = 0; index < size; index++) {
      if (distinct == 0 || inOrder[index] != inOrder[distinct - 1]) {
        inOrder[distinct++] = inOrder[index];
      }
      sums[distinct - 1]++;
    }
    for (int index = 0; index < size; index++) {
      if (counts[index] > 1) {
        int place = Arrays.binarySearch(inOrder, 0, distinct, times[index]);
        sums[place] = Math.addExact(sums[place], counts[index] - 1);
      }
    }
    return new InOrder(Arrays.copyOf(inOrder, distinct), Arrays.copyOf(sums, distinct));
  }
}
