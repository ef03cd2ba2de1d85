package leadline.publish;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadline.quantity.ReportMonth;

/**
 * What a run read and how it went: the account behind its tables.
 *
 * @param run the run's name, which becomes a folder's: letters, digits, {@code . _ -}, beginning
 *     with a letter or digit
 * @param settingsDigest SHA-256, in hexadecimal digits, of all settings that bear on the figures
 * @param inputs the batches that the run saw, oldest first
 * @param records by record kind, such as {@code overhauls}: what became of the stored rows
 * @param problems by kind of problem: how many were met in rebuilding the histories
 * @param durationsS by step, in the order in which they ran: seconds
 */
public record RunManifest(
    String run,
    ReportMonth month,
    Instant knownAt,
    String programVersion,
    String settingsDigest,
    List<Batch> inputs,
    Map<String, Census> records,
    Map<String, Long> problems,
    Map<String, Double> durationsS) {

  public RunManifest {
    if (!run.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
      throw new IllegalArgumentException("a run's name cannot be a folder's: " + run);
    }
    inputs = List.copyOf(inputs);
    records = inOrder(records);
    problems = inOrder(problems);
    durationsS = inOrder(durationsS);
  }

  private static <V> Map<String, V> inOrder(Map<String, V> entries) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(entries));
  }

  /** One ingest. */
  public record Batch(String batch, Instant committedAt, List<InputFile> files) {
    public Batch {
      files = List.copyOf(files);
    }
  }

  /**
   * A file of a batch. All rows read were stored or refused.
   *
   * @param name the file's path below the inbox
   * @param digest SHA-256 of its bytes, in hexadecimal digits
   * @param cellsTrimmed cells from which blanks around the value were dropped
   */
  public record InputFile(
      String name, String digest, long read, long stored, long refused, long cellsTrimmed) {
    public InputFile {
      if (read != stored + refused) {
        throw new IllegalArgumentException(
            "%s: %d rows read, but %d stored and %d refused"
                .formatted(name, read, stored, refused));
      }
    }
  }

  /** The stored rows of a kind of record, each counted once, as of the run's known-at. */
  public record Census(long current, long duplicate, long superseded, long withdrawn) {}
}
