package leadline.summary;

import java.io.Serializable;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Immutable whole numbers that add up exactly, in any order.
 *
 * @param <C> the type itself
 */
interface Counts<C extends Counts<C>> extends Serializable {

  C plus(C other);

  /**
   * The sum, taken in halves so that counts which grow as they are added are copied seldom.
   *
   * @param counts one or more
   */
  static <C extends Counts<C>> C sum(List<C> counts) {
    if (counts.size() == 1) {
      return counts.get(0);
    }
    int half = counts.size() / 2;
    return sum(counts.subList(0, half)).plus(sum(counts.subList(half, counts.size())));
  }

  /** The sum of counts kept apart by a key. */
  static <K extends Comparable<K>, C extends Counts<C>> SortedMap<K, C> sum(
      SortedMap<K, C> one, SortedMap<K, C> other) {
    SortedMap<K, C> sum = new TreeMap<>(one);
    other.forEach((key, counts) -> sum.merge(key, counts, Counts::plus));
    return sum;
  }
}
