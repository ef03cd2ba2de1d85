package leadline.job;

import java.time.Instant;
import leadline.lake.Batch;
import leadline.lake.KnownAt;
import leadline.lake.Lake;

/** A batch that someone named, to be taken back or read again. */
final class CountingBatch {

  private CountingBatch() {}

  /**
   * The batch of this name.
   *
   * @throws UnusableRequest where there is none, or it does not count any more
   */
  static Batch named(String id, Lake lake) {
    KnownAt known =
        lake.batches().knownAt(Instant.MAX).orElseThrow(() -> new UnusableRequest(unknown(id)));
    Batch batch = known.batch(id).orElseThrow(() -> new UnusableRequest(unknown(id)));
    known
        .withdrawal(batch)
        .ifPresent(
            withdrawal -> {
              throw new UnusableRequest(
                  "The batch %s was withdrawn at %s: ingest its files anew if they shall count."
                      .formatted(id, withdrawal.at()));
            });
    known
        .readAgainAs(batch)
        .ifPresent(
            newer -> {
              throw new UnusableRequest(
                  "The batch %s was read again as batch %s: name that one."
                      .formatted(id, newer.id()));
            });
    return batch;
  }

  private static String unknown(String id) {
    return "The lake holds no batch %s: name one of the table intake_log, or of what `ingest` said."
        .formatted(id);
  }
}
