package leadline.lake;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.apache.iceberg.Snapshot;
import org.apache.iceberg.Table;
import org.apache.iceberg.util.SnapshotUtil;

/**
 * Keeps what readers have begun on: whatever one that began no longer ago than this may have met
 * stays.
 *
 * @param age not negative; longer than any reader takes
 */
public record AgeGuard(Clock clock, Duration age) {

  public AgeGuard {
    if (age.isNegative()) {
      throw new IllegalArgumentException("an age guard of " + age);
    }
  }

  /** The moment at which the earliest reader that still counts may have begun. */
  Instant begins() {
    return clock.instant().minus(age);
  }

  /** The snapshots that such a reader may have met: the one that was current then, and later. */
  List<Snapshot> met(Table table) {
    Optional<Snapshot> earliest =
        Optional.ofNullable(SnapshotUtil.nullableSnapshotIdAsOfTime(table, begins().toEpochMilli()))
            .map(table::snapshot);
    return StreamSupport.stream(table.snapshots().spliterator(), false)
        .filter(
            snapshot ->
                earliest
                    .filter(first -> snapshot.timestampMillis() < first.timestampMillis())
                    .isEmpty())
        .toList();
  }
}
