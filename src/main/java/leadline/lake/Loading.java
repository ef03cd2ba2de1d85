package leadline.lake;

import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leadline.fleet.Catalogue;
import leadline.fleet.RecordKind;
import leadline.fleet.StoredRow;
import leadline.intake.ExportFile;
import leadline.intake.ExportReader;
import leadline.intake.RefusedRow;
import leadline.intake.RowSink;
import org.apache.iceberg.SerializableTable;
import org.apache.iceberg.Table;

/** Reads exports in parallel tasks, each of which writes its rows to Parquet files of its own. */
public final class Loading {

  /** Small exports are read together, so that a night's files of a fleet do not become as many. */
  private static final long BYTES_PER_TASK = 32L << 20;

  private static final int REFUSED_ROWS_TO_SHOW = 20;

  private final Lake lake;
  private final Path inbox;
  private final Catalogue catalogue;
  private final Instant now;

  public Loading(Lake lake, Path inbox, Catalogue catalogue, Instant now) {
    this.lake = lake;
    this.inbox = inbox;
    this.catalogue = catalogue;
    this.now = now;
  }

  /** Reads the exports and writes their rows under the batch's name, without committing them. */
  public List<Loaded> load(Engine engine, List<ExportFile> exports, String batch) {
    List<Task> tasks = tasks(exports, batch);
    if (tasks.isEmpty()) {
      return List.of();
    }
    return engine.context().parallelize(tasks, tasks.size()).map(Task::run).collect();
  }

  private List<Task> tasks(List<ExportFile> exports, String batch) {
    Map<RecordKind, List<ExportFile>> byKind = new EnumMap<>(RecordKind.class);
    exports.forEach(file -> byKind.computeIfAbsent(file.kind(), k -> new ArrayList<>()).add(file));
    Table refusals = forTasks(LakeTable.REFUSED, RefusedRows.SCHEMA);
    List<Task> tasks = new ArrayList<>();
    byKind.forEach(
        (kind, files) -> {
          Table records = forTasks(RecordTable.of(kind), RecordTable.schema(kind));
          for (List<ExportFile> share : shares(files)) {
            tasks.add(
                new Task(kind, share, inbox.toString(), catalogue, now, batch, records, refusals));
          }
        });
    return tasks;
  }

  private Table forTasks(LakeTable name, org.apache.iceberg.Schema schema) {
    return SerializableTable.copyOf(lake.table(name, schema));
  }

  private List<List<ExportFile>> shares(List<ExportFile> files) {
    List<List<ExportFile>> shares = new ArrayList<>();
    long bytes = BYTES_PER_TASK;
    for (ExportFile file : files) {
      if (bytes >= BYTES_PER_TASK) {
        shares.add(new ArrayList<>());
        bytes = 0;
      }
      shares.get(shares.size() - 1).add(file);
      bytes += size(file);
    }
    return shares;
  }

  private long size(ExportFile file) {
    try {
      return Files.size(inbox.resolve(file.path()));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file.path(), e);
    }
  }

  /** Reads some exports of one kind. */
  private record Task(
      RecordKind kind,
      List<ExportFile> files,
      String inbox,
      Catalogue catalogue,
      Instant now,
      String batch,
      Table records,
      Table refusals)
      implements Serializable {

    Loaded run() throws IOException {
      RowWriter writer = new RowWriter(kind, batch, records, refusals);
      FirstRefused sink = new FirstRefused(writer, new ArrayList<>());
      List<Loaded.Outcome> outcomes = new ArrayList<>();
      for (ExportFile file : files) {
        outcomes.add(
            new Loaded.Outcome(
                file, ExportReader.read(Path.of(inbox), file, catalogue, now, sink)));
      }
      return new Loaded(kind, outcomes, writer.recordFiles(), writer.refusedFiles(), sink.rows());
    }
  }

  /** Keeps the first refused rows beside writing all. */
  private record FirstRefused(RowWriter writer, List<RefusedRow> rows) implements RowSink {

    @Override
    public void stored(StoredRow row) {
      writer.stored(row);
    }

    @Override
    public void refused(RefusedRow row) {
      if (rows.size() < REFUSED_ROWS_TO_SHOW) {
        rows.add(row);
      }
      writer.refused(row);
    }
  }
}
