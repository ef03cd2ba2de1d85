package leadline.lake;

import java.io.IOException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.iceberg.DataFile;
import org.apache.iceberg.FileScanTask;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.io.CloseableIterable;

/**
 * Data files whose rows are written anew, into one.
 *
 * @param order columns by which the rows of several files are sorted
 */
record Gathering(Owned rows, List<String> order, List<FileScanTask> files) implements Serializable {

  Gathering {
    files = new ArrayList<>(files); // Java serialisation of scan tasks
  }

  /** Writes the rows that stay; the file belongs to no table until it is committed. */
  List<DataFile> write() throws IOException {
    if (files.size() == 1) {
      try (CloseableIterable<Record> stored = RowFiles.rows(rows.table(), files.get(0))) {
        return RowFiles.write(rows.table(), Owned.stream(stored).filter(rows::stays).iterator());
      }
    }
    List<Record> together = new ArrayList<>();
    for (FileScanTask file : files) {
      try (CloseableIterable<Record> stored = RowFiles.rows(rows.table(), file)) {
        Owned.stream(stored).filter(rows::stays).forEach(together::add);
      }
    }
    together.sort(sorting());
    return RowFiles.write(rows.table(), together.iterator());
  }

  private Comparator<Record> sorting() {
    return order.stream()
        .map(Gathering::by)
        .reduce(Comparator::thenComparing)
        .orElseThrow(() -> new IllegalStateException("rows without an order"));
  }

  @SuppressWarnings("unchecked") // every stored type that rows are sorted by is comparable
  private static Comparator<Record> by(String column) {
    return Comparator.comparing(row -> (Comparable<Object>) row.getField(column));
  }
}
