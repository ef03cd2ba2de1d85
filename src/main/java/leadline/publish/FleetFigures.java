package leadline.publish;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.summary.Level;
import leadline.summary.SharedColumns;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.Window;

/** The rows of the published tables that speak of the whole fleet since its records began. */
record FleetFigures(List<PublishedTable> tables) {

  /** What a row must have in a column. */
  record Having<T>(TableColumn<T> column, T value) {
    boolean holdsFor(TableRow row) {
      return row.need(column).equals(value);
    }
  }

  /** The first row of the table with all these values. */
  Optional<TableRow> row(TableSpec spec, Having<?>... values) {
    return tables.stream()
        .filter(table -> table.spec().equals(spec))
        .flatMap(table -> table.rows().stream())
        .filter(new Having<>(SharedColumns.LEVEL, Level.FLEET.word())::holdsFor)
        .filter(new Having<>(SharedColumns.WINDOW, Window.SINCE_START.word())::holdsFor)
        .filter(row -> Stream.of(values).allMatch(having -> having.holdsFor(row)))
        .findFirst();
  }
}
