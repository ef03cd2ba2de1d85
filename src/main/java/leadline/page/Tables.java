package leadline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import leadline.publish.Issue;
import leadline.publish.Numbers;
import leadline.publish.PublishedTable;
import leadline.summary.Level;
import leadline.summary.SharedColumns;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/** The published tables of an issue, as a page asks for them. */
record Tables(List<PublishedTable> published) {

  /** A page with longer tables would be slow to open on board. */
  private static final int MOST_ROWS = 1_000;

  static Tables of(Issue issue) {
    return new Tables(issue.tables());
  }

  /** Without the rows of other levels: much shorter where there are many vessels. */
  Tables at(Level level) {
    return new Tables(
        published.stream()
            .map(
                table ->
                    table.spec().columns().contains(SharedColumns.LEVEL)
                        ? new PublishedTable(
                            table.spec(),
                            table.rows().stream()
                                .filter(having(SharedColumns.LEVEL, level.word())::holdsFor)
                                .toList())
                        : table)
            .toList());
  }

  /** The rows with all these values; none where the run has no such table. */
  List<TableRow> rows(TableSpec spec, Having<?>... values) {
    return published.stream()
        .filter(table -> table.spec().equals(spec))
        .flatMap(table -> table.rows().stream())
        .filter(row -> Stream.of(values).allMatch(having -> having.holdsFor(row)))
        .toList();
  }

  /** What a row must have in a column. */
  record Having<T>(TableColumn<T> column, T value) {
    boolean holdsFor(TableRow row) {
      return row.find(column).filter(value::equals).isPresent();
    }
  }

  static <T> Having<T> having(TableColumn<T> column, T value) {
    return new Having<>(column, value);
  }

  /** Some columns of some rows of a table. */
  static TableView view(
      String id, String caption, TableSpec spec, List<TableRow> rows, List<Shown> columns) {
    return view(id, caption, spec, rows, row -> RowIds.NONE, columns);
  }

  /**
   * Some columns of some rows of a table, of which sentences speak.
   *
   * @param ids by row, the same only for rows one below the other; of rows with an id the first is
   *     shown even where a table is cut
   */
  static TableView view(
      String id,
      String caption,
      TableSpec spec,
      List<TableRow> rows,
      Function<TableRow, String> ids,
      List<Shown> columns) {
    List<TableView.Rows> shown = shown(rows, ids, columns);
    int count = shown.stream().mapToInt(group -> group.cells().size()).sum();
    String remark =
        rows.size() == count
            ? ""
            : "%s of %s rows; all are in the file."
                .formatted(Numbers.count(count), Numbers.count(rows.size()));
    return new TableView(
        id,
        caption,
        remark,
        "../tables/" + spec.name() + ".csv",
        TableView.Sheet.of(columns.size()),
        columns.stream().map(Shown::head).toList(),
        shown);
  }

  private static List<TableView.Rows> shown(
      List<TableRow> rows, Function<TableRow, String> ids, List<Shown> columns) {
    List<TableView.Rows> groups = new ArrayList<>();
    List<List<Cell>> cells = new ArrayList<>();
    String last = rows.isEmpty() ? RowIds.NONE : ids.apply(rows.get(0));
    for (int i = 0; i < rows.size(); i++) {
      String id = ids.apply(rows.get(i));
      if (!id.equals(last)) {
        groups.add(new TableView.Rows(last, cells));
        cells.clear();
      }
      if (i < MOST_ROWS || !(id.isEmpty() || id.equals(last))) {
        cells.add(cells(rows.get(i), columns));
      }
      last = id;
    }
    groups.add(new TableView.Rows(last, cells));
    return groups;
  }

  private static List<Cell> cells(TableRow row, List<Shown> columns) {
    return columns.stream().map(column -> column.cell(row)).toList();
  }

  static List<Shown> columns(TableSpec spec, TableColumn<?>... columns) {
    return Stream.of(columns).map(column -> Shown.of(spec, column)).toList();
  }
}
