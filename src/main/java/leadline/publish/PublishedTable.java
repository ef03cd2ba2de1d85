package leadline.publish;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/**
 * A table and its rows, sorted by the key so that the same rows give the same files in whatever
 * order they came. A table without a key keeps the order of its rows.
 */
public record PublishedTable(TableSpec spec, List<TableRow> rows) {

  /** Fails where two rows have the same key, and where a text is empty instead of absent. */
  public PublishedTable {
    rows = sorted(spec, rows);
    requireDistinctKeys(spec, rows);
    requireNoEmptyTexts(spec, rows);
  }

  private static List<TableRow> sorted(TableSpec spec, List<TableRow> rows) {
    List<TableRow> sorted = new ArrayList<>(rows);
    sorted.sort((one, other) -> compareKeys(spec, one, other));
    return List.copyOf(sorted);
  }

  private static int compareKeys(TableSpec spec, TableRow one, TableRow other) {
    for (TableColumn<?> key : spec.keys()) {
      int order = compareValues(one.need(key), other.need(key));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  @SuppressWarnings("unchecked") // both are values of one column, and all its types are comparable
  private static int compareValues(Object one, Object other) {
    return ((Comparable<Object>) one).compareTo(other);
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
