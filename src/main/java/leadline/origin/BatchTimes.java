package leadline.origin;

import java.io.Serializable;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** When each batch known was committed, by its place in the list of committed batches. */
public final class BatchTimes implements Serializable {

  private final Map<Long, Instant> committedAt;
  private final Instant last;

  /**
   * @param last when the newest batch, or the newest withdrawal of one, was committed
   */
  public BatchTimes(Map<Long, Instant> committedAt, Instant last) {
    this.committedAt = Map.copyOf(committedAt);
    this.last = last;
  }

  public Instant of(long batch) {
    return Optional.ofNullable(committedAt.get(batch))
        .orElseThrow(() -> new IllegalArgumentException("batch " + batch + " is not known"));
  }

  /** What was known is known as of then. */
  public Instant last() {
    return last;
  }
}
