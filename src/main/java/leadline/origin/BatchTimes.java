package leadline.origin;

import java.io.Serializable;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * When each batch known was committed, by its place in the list of committed batches; at least one.
 */
public final class BatchTimes implements Serializable {

  private final SortedMap<Long, Instant> committedAt;

  public BatchTimes(Map<Long, Instant> committedAt) {
    if (committedAt.isEmpty()) {
      throw new IllegalArgumentException("no batch is known");
    }
    this.committedAt = new TreeMap<>(committedAt);
  }

  public Instant of(long batch) {
    return Optional.ofNullable(committedAt.get(batch))
        .orElseThrow(() -> new IllegalArgumentException("batch " + batch + " is not known"));
  }

  /** When the newest batch was committed: what was known is known as of then. */
  public Instant last() {
    return of(committedAt.lastKey());
  }
}
