package leadline.lake;

import java.io.IOException;
import java.io.Serializable;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.iceberg.FileScanTask;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.io.CloseableIterable;

/**
 * The rows of a table by the batch or run that wrote them.
 *
 * @param column names the batch or run
 * @param standing batches or runs whose rows stay
 */
record Owned(Table table, String column, Set<String> standing) implements Serializable {

  boolean stays(Record row) {
    return standing.contains(Stored.text(row, column));
  }

  /** How many rows of a file no standing batch or run wrote. */
  long strays(FileScanTask file) throws IOException {
    Schema owner = table.schema().select(List.of(column));
    try (CloseableIterable<Record> rows = RowFiles.read(table, file, owner)) {
      return stream(rows).filter(row -> !stays(row)).count();
    }
  }

  static Stream<Record> stream(Iterable<Record> rows) {
    return StreamSupport.stream(rows.spliterator(), false);
  }
}
