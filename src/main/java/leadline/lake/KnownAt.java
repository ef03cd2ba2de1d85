package leadline.lake;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leadline.origin.BatchTimes;

/**
 * The committed batches up to a moment: what was known then. Rows of other batches are invisible.
 *
 * @param at when the newest of these batches was committed
 */
public record KnownAt(Instant at, List<Batch> batches) {

  public KnownAt {
    batches = List.copyOf(batches);
  }

  /** When each of these batches was committed. */
  public BatchTimes times() {
    return new BatchTimes(
        batches.stream().collect(Collectors.toMap(Batch::sequence, Batch::committedAt)));
  }

  Map<String, Long> sequenceOfBatch() {
    return new TreeMap<>(batches.stream().collect(Collectors.toMap(Batch::id, Batch::sequence)));
  }
}
