package leadline.publish;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/** A table and its rows, in the order in which they are to be read. */
public record PublishedTable(TableSpec spec, List<TableRow> rows) {

  /** Fails where two rows have the same key, and where a text is empty instead of absent. */
  public PublishedTable {
    rows = List.copyOf(rows);
    requireDistinctKeys(spec, rows);
    requireNoEmptyTexts(spec, rows);
  }

  private static void requireDistinctKeys(TableSpec spec, List<TableRow> rows) {
    if (spec.keys().isEmpty()) {
      return;
    }
    Set<List<?>> seen = new HashSet<>();
    for (TableRow row : rows) {
      List<?> key = spec.keys().stream().map(row::need).toList();
      if (!seen.add(key)) {
        throw new IllegalArgumentException(spec.name() + " has two rows with the key " + key);
      }
    }
  }

  private static void requireNoEmptyTexts(TableSpec spec, List<TableRow> rows) {
    for (TableRow row : rows) {
      for (TableColumn<?> column : spec.columns()) {
        if (row.find(column).filter(""::equals).isPresent()) {
          throw new IllegalArgumentException(
              "an empty text in " + spec.name() + "." + column.name() + " would read as absent");
        }
      }
    }
  }
}
