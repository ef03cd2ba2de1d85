package leadline.lake;

import java.util.LinkedHashMap;
import java.util.Map;

/** What was told of the number of rows, and how many were found. */
final class Counts<K> {

  private final Map<K, Count> counts = new LinkedHashMap<>();

  private static final class Count {
    private long told;
    private long found;
  }

  /** Is handed what differs. */
  interface Unlike<K> {
    void accept(K rows, long told, long found);
  }

  void tell(K rows, long number) {
    of(rows).told += number;
  }

  void find(K row) {
    of(row).found++;
  }

  private Count of(K rows) {
    return counts.computeIfAbsent(rows, first -> new Count());
  }

  /** In the order in which rows were told of, then found. */
  void forEachUnlike(Unlike<K> differing) {
    counts.forEach(
        (rows, count) -> {
          if (count.told != count.found) {
            differing.accept(rows, count.told, count.found);
          }
        });
  }
}
