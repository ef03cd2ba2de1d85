package leadline.page;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import leadline.publish.PublishedTable;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/** A published table known by its name and those of its columns only. */
record NamedTable(TableSpec spec, List<TableRow> rows) {

  /** Empty where the run has no such table. */
  static Optional<NamedTable> find(Tables tables, String name) {
    return tables.published().stream()
        .filter(table -> table.spec().name().equals(name))
        .map((PublishedTable table) -> new NamedTable(table.spec(), table.rows()))
        .findFirst();
  }

  NamedTable where(Predicate<TableRow> holds) {
    return new NamedTable(spec, rows.stream().filter(holds).toList());
  }

  /** As the published table has it; empty where it has no such value. */
  String text(TableRow row, String column) {
    return value(row, column).map(Object::toString).orElse("");
  }

  Optional<Object> value(TableRow row, String name) {
    return column(name).flatMap(column -> row.find(column).map(Object.class::cast));
  }

  /** Of those columns that the table has. */
  TableView view(String id, String caption, String... columns) {
    return Tables.view(id, caption, spec, rows, shown(columns));
  }

  /** Those of these columns that the table has. */
  List<Shown> shown(String... columns) {
    return Stream.of(columns)
        .flatMap(name -> column(name).stream())
        .map(column -> Shown.of(spec, column))
        .toList();
  }

  private Optional<TableColumn<?>> column(String name) {
    return spec.columns().stream()
        .filter(column -> column.name().equals(name))
        .<TableColumn<?>>map(column -> column)
        .findFirst();
  }
}
