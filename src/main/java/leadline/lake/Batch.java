package leadline.lake;

import java.time.Instant;
import java.util.List;

/**
 * One ingest that was committed.
 *
 * @param sequence its place in the list of committed batches, from 1
 */
public record Batch(
    long sequence,
    String id,
    Instant committedAt,
    String programVersion,
    List<LoadedFile> files,
    Delivery delivery) {

  public Batch {
    files = List.copyOf(files);
  }
}
