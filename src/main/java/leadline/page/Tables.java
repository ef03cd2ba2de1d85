package leadline.page;

import java.util.List;
import java.util.stream.Stream;
import leadline.publish.Issue;
import leadline.publish.Numbers;
import leadline.publish.PublishedTable;
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
    String file = "../tables/" + spec.name() + ".csv";
    String remark =
        rows.size() <= MOST_ROWS
            ? ""
            : "The first %s of %s rows; all are in the file."
                .formatted(Numbers.count(MOST_ROWS), Numbers.count(rows.size()));
    return new TableView(
        id,
        caption,
        remark,
        file,
        columns.stream().map(Shown::head).toList(),
        rows.stream()
            .limit(MOST_ROWS)
            .map(row -> columns.stream().map(column -> column.cell(row)).toList())
            .toList());
  }

  static List<Shown> columns(TableSpec spec, TableColumn<?>... columns) {
    return Stream.of(columns).map(column -> Shown.of(spec, column, Shown.heading(column))).toList();
  }
}
