package leadline.lake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.iceberg.DataFile;
import org.apache.iceberg.FileScanTask;
import org.apache.iceberg.OverwriteFiles;
import org.apache.iceberg.SerializableTable;
import org.apache.iceberg.Table;
import org.apache.iceberg.io.CloseableIterable;

/**
 * Takes rows that belong to nothing out of a table, and gathers its small files, in one commit. The
 * writer's lock must be held.
 */
final class Rewrite {

  /** A file with fewer rows is worth gathering with others. */
  private static final long SMALL = RowWriter.ROWS_PER_FILE / 2;

  private final Table table;
  private final Owned rows;
  private final List<String> order;

  Rewrite(LakeTable name, Table table, Set<String> standing) {
    this.table = table;
    this.rows = new Owned(SerializableTable.copyOf(table), name.owner(), new TreeSet<>(standing));
    this.order = name.order();
  }

  /** What a rewrite did. */
  record Done(long rowsDropped, long filesBefore, long filesAfter) {

    static final Done NOTHING = new Done(0, 0, 0);

    Done and(Done other) {
      return new Done(
          rowsDropped + other.rowsDropped,
          filesBefore + other.filesBefore,
          filesAfter + other.filesAfter);
    }
  }

  Done run(Engine engine) {
    List<FileScanTask> files = files();
    List<Long> strays = engine.each(files, rows::strays);
    List<Gathering> plan = plan(files, strays);
    if (plan.isEmpty()) {
      return Done.NOTHING;
    }
    List<DataFile> written =
        engine.each(plan, Gathering::write).stream().flatMap(List::stream).toList();
    List<DataFile> replaced =
        plan.stream()
            .flatMap(gathering -> gathering.files().stream())
            .map(FileScanTask::file)
            .toList();
    Done done = new Done(total(strays), replaced.size(), written.size());
    requireNoLoss(replaced, written, done.rowsDropped());
    OverwriteFiles overwrite = table.newOverwrite();
    replaced.forEach(overwrite::deleteFile);
    written.forEach(overwrite::addFile);
    overwrite.commit();
    return done;
  }

  private List<FileScanTask> files() {
    List<FileScanTask> files = new ArrayList<>();
    try (CloseableIterable<FileScanTask> tasks = table.newScan().planFiles()) {
      tasks.forEach(files::add);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list the files of " + table.name(), e);
    }
    return files;
  }

  private List<Gathering> plan(List<FileScanTask> files, List<Long> strays) {
    List<Gathering> plan = new ArrayList<>();
    List<FileScanTask> small = new ArrayList<>();
    long smallRows = 0;
    long smallStrays = 0;
    for (int i = 0; i < files.size(); i++) {
      FileScanTask file = files.get(i);
      long kept = file.file().recordCount() - strays.get(i);
      if (kept >= SMALL) {
        add(plan, List.of(file), strays.get(i));
        continue;
      }
      if (smallRows + kept > RowWriter.ROWS_PER_FILE) {
        add(plan, small, smallStrays);
        small.clear();
        smallRows = 0;
        smallStrays = 0;
      }
      small.add(file);
      smallRows += kept;
      smallStrays += strays.get(i);
    }
    add(plan, small, smallStrays);
    return plan;
  }

  /** One file with nothing to drop is as it should be. */
  private void add(List<Gathering> plan, List<FileScanTask> files, long strays) {
    if (files.size() > 1 || strays > 0) {
      plan.add(new Gathering(rows, order, files));
    }
  }

  private void requireNoLoss(List<DataFile> replaced, List<DataFile> written, long dropped) {
    long before = replaced.stream().mapToLong(DataFile::recordCount).sum();
    long after = written.stream().mapToLong(DataFile::recordCount).sum();
    if (before != after + dropped) {
      throw new IllegalStateException(
          "%s: %d rows, %d written anew, %d dropped"
              .formatted(table.name(), before, after, dropped));
    }
  }

  private static long total(List<Long> counts) {
    return counts.stream().mapToLong(Long::longValue).sum();
  }
}
