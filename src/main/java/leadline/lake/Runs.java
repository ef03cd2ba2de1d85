package leadline.lake;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;

/** The list of committed runs: a run's row in it is what makes its results visible. */
public final class Runs {

  private static final Schema SCHEMA =
      new Schemas()
          .text("run", "the run's identifier")
          .text("month", "the month it reports")
          .moment("known_at", "when the newest batch it used was committed")
          .text("settings_digest", "SHA-256 of the settings it used")
          .text("program_version", "version of the program")
          .moment("committed_at", "when the run was committed")
          .counts("census", "rows by kind of record and state")
          .counts("problems", "problems by kind")
          .counts("rows", "rows written, by table")
          .counts("milliseconds", "duration of each step")
          .build();

  private static final Comparator<Run> NEWEST_LAST =
      Comparator.comparing(Run::knownAt).thenComparing(Run::committedAt).thenComparing(Run::id);

  private final Lake lake;

  Runs(Lake lake) {
    this.lake = lake;
  }

  /** All committed runs, by what was known, then by when they were committed. */
  public List<Run> committed() {
    return lake.find(LakeTable.RUNS)
        .map(table -> Stored.list(table, Runs::decode, NEWEST_LAST))
        .orElse(List.of());
  }

  /**
   * Commits a run whose results have been appended: from now on they are visible. The moment is the
   * run's own, or just after the latest on the list where the clock has gone back.
   */
  public Run commit(Run computed) {
    Run run = computed.committedNotBefore(earliestNext());
    Table table = lake.table(LakeTable.RUNS, SCHEMA);
    Record row = GenericRecord.create(table.schema());
    row.setField("run", run.id());
    row.setField("month", run.month());
    row.setField("known_at", Stored.moment(run.knownAt()));
    row.setField("settings_digest", run.settingsDigest());
    row.setField("program_version", run.programVersion());
    row.setField("committed_at", Stored.moment(run.committedAt()));
    row.setField("census", new TreeMap<>(run.census()));
    row.setField("problems", new TreeMap<>(run.problems()));
    row.setField("rows", new TreeMap<>(run.rows()));
    row.setField("milliseconds", new TreeMap<>(run.milliseconds()));
    lake.append(table, RowFiles.write(table, List.of(row).iterator()));
    return run;
  }

  private Instant earliestNext() {
    return committed().stream()
        .map(Run::committedAt)
        .max(Comparator.naturalOrder())
        .map(latest -> latest.plus(1, ChronoUnit.MILLIS))
        .orElse(Instant.MIN);
  }

  private static Run decode(Record row) {
    return new Run(
        Stored.text(row, "run"),
        Stored.text(row, "month"),
        Stored.moment(row, "known_at"),
        Stored.text(row, "settings_digest"),
        Stored.text(row, "program_version"),
        Stored.moment(row, "committed_at"),
        Stored.counts(row, "census"),
        Stored.counts(row, "problems"),
        Stored.counts(row, "rows"),
        Stored.counts(row, "milliseconds"));
  }
}
