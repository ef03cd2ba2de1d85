package leadline.stats;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * How many durations there are at each time. Counts lie in a table hashed by time, which a million
 * times fill in a fraction of what a sorted map takes; the order is made when asked for.
 */
final class CountsByTime {

  private static final int LEAST_SLOTS = 16;

  /**
   * Of the golden section, as in Fibonacci hashing: Knuth 1998, The Art of Computer Programming,
   * section 6.4.
   */
  private static final long MIXING = 0x9E3779B97F4A7C15L;

  private double[] times = new double[LEAST_SLOTS];

  /** 0 where a slot is free, and its time too. */
  private long[] counts = new long[LEAST_SLOTS];

  private int size;

  CountsByTime() {}

  CountsByTime copy() {
    CountsByTime copy = new CountsByTime();
    copy.addAll(this);
    return copy;
  }

  /**
   * @param time 0 or more
   * @param count 1 or more
   * @throws ArithmeticException if the count at the time overflows
   */
  void add(double time, long count) {
    if (2 * size >= times.length) {
      grow();
    }
    double key = time + 0.0;
    int slot = slotOf(key);
    if (counts[slot] == 0) {
      times[slot] = key;
      size++;
    }
    counts[slot] = Math.addExact(counts[slot], count);
  }

  void addAll(CountsByTime other) {
    for (int slot = 0; slot < other.times.length; slot++) {
      if (other.counts[slot] > 0) {
        add(other.times[slot], other.counts[slot]);
      }
    }
  }

  /** 0 where nothing was added. */
  long at(double time) {
    return counts[slotOf(time + 0.0)];
  }

  /** The latest time; empty if nothing was added. */
  OptionalDouble last() {
    return size == 0 ? OptionalDouble.empty() : Arrays.stream(times).max();
  }

  /** In order, each once. */
  double[] times() {
    double[] sorted = new double[size];
    int index = 0;
    for (int slot = 0; slot < times.length; slot++) {
      if (counts[slot] > 0) {
        sorted[index++] = times[slot];
      }
    }
    Arrays.sort(sorted);
    return sorted;
  }

  /** Where the time is, or where it is to go. */
  private int slotOf(double time) {
    long bits = Double.doubleToLongBits(time);
    long mixed = (bits ^ (bits >>> 32)) * MIXING;
    int slot = (int) (mixed >>> (Long.numberOfLeadingZeros(times.length) + 1));
    while (counts[slot] > 0 && times[slot] != time) {
      slot = (slot + 1) & (times.length - 1);
    }
    return slot;
  }

  private void grow() {
    double[] before = times;
    long[] countsBefore = counts;
    times = new double[2 * before.length];
    counts = new long[2 * before.length];
    for (int slot = 0; slot < before.length; slot++) {
      if (countsBefore[slot] > 0) {
        int moved = slotOf(before[slot]);
        times[moved] = before[slot];
        counts[moved] = countsBefore[slot];
      }
    }
  }
}
