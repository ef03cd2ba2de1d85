package leadline.lake;

import java.time.Instant;

/** A count on which the lake contradicts itself. */
public sealed interface Disagreement {

  /** How many rows there should be, by the account of the batch or run. */
  long told();

  /** How many rows there are. */
  long found();

  /** Where, both counts, and what to do. */
  String sentence();

  /**
   * Rows of an export file.
   *
   * @param table where they lie, such as {@code records.hours}
   */
  record RowsOfFile(String batch, String file, LakeTable table, long told, long found)
      implements Disagreement {
    @Override
    public String sentence() {
      return "batch %s, file %s, table %s: rows by the batch's account %d, found %d; compute nothing from this lake: bring it back from a backup, or ingest its exports into a new one."
          .formatted(batch, file, table, told, found);
    }
  }

  /** Rows of a table of a run. */
  record RowsOfRun(
      String run, String month, Instant knownAt, LakeTable table, long told, long found)
      implements Disagreement {
    @Override
    public String sentence() {
      return "run %s, table %s: rows by the run's account %d, found %d; do not publish the run: compute %s again, with --known-at %s."
          .formatted(run, table, told, found, month, knownAt);
    }
  }
}
