package leadline.page;

import static leadline.page.Tables.having;

import java.util.List;
import java.util.stream.Stream;
import leadline.summary.Level;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.Window;

/** A component of a level in a stretch of time: what a table's rows can be asked for. */
record Subject(Tables tables, String component, Level level, Window window) {

  static Subject ofFleet(Tables tables, String component) {
    return new Subject(tables, component, Level.FLEET, Window.SINCE_START);
  }

  Subject at(Level other) {
    return new Subject(tables, component, other, window);
  }

  Subject in(Window other) {
    return new Subject(tables, component, level, other);
  }

  List<TableRow> rows(TableSpec spec, Tables.Having<?>... others) {
    return tables.rows(
        spec,
        Stream.concat(
                Stream.of(
                    having(SharedColumns.LEVEL, level.word()),
                    having(SharedColumns.WINDOW, window.word()),
                    having(SharedColumns.COMPONENT, component)),
                Stream.of(others))
            .toArray(Tables.Having<?>[]::new));
  }
}
