package leadline.publish;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import org.dhatim.fastexcel.Worksheet;

/** A published table on its own sheet: one row of headings, kept in sight, then the rows. */
final class WorkbookTable {

  /** Beyond it a spreadsheet's numbers are not exact: such a count is written as text. */
  static final long LARGEST_EXACT = 999_999_999_999_999L;

  private static final double NARROWEST = 9;
  private static final double WIDEST = 48;
  private static final double MOMENT_WIDTH = 20;
  private static final int ROWS_MEASURED = 1000;

  private final Worksheet sheet;
  private final PublishedTable table;

  WorkbookTable(Worksheet sheet, PublishedTable table) {
    this.sheet = sheet;
    this.table = table;
  }

  void write() {
    List<TableColumn<?>> columns = table.spec().columns();
    for (int at = 0; at < columns.size(); at++) {
      write(at, columns.get(at));
    }
    int last = columns.size() - 1;
    sheet.range(0, 0, 0, last).style().bold().wrapText(true).verticalAlignment("top").set();
    sheet.freezePane(0, 1);
    sheet.setAutoFilter(0, 0, table.rows().size(), last);
    sheet.repeatRows(0);
    Paper.asItIs(sheet);
  }

  private void write(int at, TableColumn<?> column) {
    CellKind kind = CellKind.of(column);
    sheet.value(0, at, heading(column));
    sheet.width(at, width(column, kind));
    for (int row = 0; row < table.rows().size(); row++) {
      Optional<?> value = table.rows().get(row).find(column);
      if (value.isPresent()) {
        write(row + 1, at, kind, value.get());
      }
    }
    if (kind != CellKind.TEXT && !table.rows().isEmpty()) {
      sheet.range(1, at, table.rows().size(), at).style().format(format(column, kind)).set();
    }
  }

  static String heading(TableColumn<?> column) {
    if (CellKind.of(column) == CellKind.MOMENT) {
      return column.name() + " (UTC)";
    }
    boolean measured = !column.unit().isEmpty() && !column.unit().equals("1");
    return measured ? column.name() + " (" + column.unit() + ")" : column.name();
  }

  private void write(int row, int at, CellKind kind, Object value) {
    switch (kind) {
      case TEXT -> sheet.value(row, at, WorkbookText.of((String) value));
      case COUNT -> count(row, at, (Long) value);
      case REAL -> sheet.value(row, at, (Double) value);
      case MOMENT -> sheet.value(row, at, (Instant) value);
    }
  }

  private void count(int row, int at, long count) {
    if (Math.abs(count) <= LARGEST_EXACT) {
      sheet.value(row, at, count);
    } else {
      sheet.value(row, at, Long.toString(count));
    }
  }

  private static String format(TableColumn<?> column, CellKind kind) {
    if (kind == CellKind.MOMENT) {
      return "yyyy-mm-dd hh:mm:ss";
    } else if (kind == CellKind.COUNT) {
      return "#,##0";
    } else if (column.unit().equals("h")) {
      return "#,##0.0";
    }
    return CellKind.isShare(column) ? "0.0%" : "General";
  }

  private double width(TableColumn<?> column, CellKind kind) {
    int longestWord = 0;
    for (String word : heading(column).split(" ", -1)) {
      longestWord = Math.max(longestWord, word.length());
    }
    double content = kind == CellKind.MOMENT ? MOMENT_WIDTH : longestText(column, kind);
    return Math.min(WIDEST, Math.max(NARROWEST, Math.max(longestWord, content) + 3));
  }

  private int longestText(TableColumn<?> column, CellKind kind) {
    return kind == CellKind.TEXT
        ? table.rows().stream()
            .limit(ROWS_MEASURED)
            .map((TableRow row) -> row.find(column))
            .flatMap(Optional::stream)
            .mapToInt(text -> text.toString().length())
            .max()
            .orElse(0)
        : 0;
  }
}
