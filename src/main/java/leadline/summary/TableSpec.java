package leadline.summary;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A published table: name, meaning, columns. The single source for codec, CSV, Parquet, data
 * package and docs.
 */
public record TableSpec(String name, String meaning, List<TableColumn<?>> columns) {

  public TableSpec {
    columns = List.copyOf(columns);
    Set<String> names = new HashSet<>();
    for (TableColumn<?> column : columns) {
      if (!names.add(column.name())) {
        throw new IllegalArgumentException(name + " has two columns " + column.name());
      }
    }
  }

  /** A table whose columns come in groups, some of which other tables share. */
  @SafeVarargs
  static TableSpec of(String name, String meaning, List<TableColumn<?>>... groups) {
    List<TableColumn<?>> columns = new ArrayList<>();
    for (List<TableColumn<?>> group : groups) {
      columns.addAll(group);
    }
    return new TableSpec(name, meaning, columns);
  }

  public List<TableColumn<?>> keys() {
    return columns.stream().filter(column -> column.need() == TableColumn.Need.KEY).toList();
  }

  public TableRow.Builder row() {
    return new TableRow.Builder(this);
  }
}
