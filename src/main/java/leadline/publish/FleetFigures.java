package leadline.publish;

import java.util.List;
import java.util.Optional;
import leadline.summary.Level;
import leadline.summary.SharedColumns;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.Window;

/** The rows of the published tables that speak of the whole fleet since its records began. */
record FleetFigures(List<PublishedTable> tables) {

  /** A word that a row must have in a column. */
  record Having(TableColumn<String> column, String word) {
    boolean holdsFor(TableRow row) {
      return row.need(column).equals(word);
    }
  }

  /** The first row of the table with all these words. */
  Optional<TableRow> row(TableSpec spec, Having... words) {
    return tables.stream()
        .filter(table -> table.spec().equals(spec))
        .flatMap(table -> table.rows().stream())
        .filter(new Having(SharedColumns.LEVEL, Level.FLEET.word())::holdsFor)
        .filter(new Having(SharedColumns.WINDOW, Window.SINCE_START.word())::holdsFor)
        .filter(row -> List.of(words).stream().allMatch(having -> having.holdsFor(row)))
        .findFirst();
  }
}
