package leadline.publish;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.CellType;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.fleet.ReturnLayout;
import leadline.fleet.ReturnLayout.Fill;
import leadline.fleet.Written;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * A return sheet as a workbook: the sheet to fill in, with the words of a column to choose from,
 * and a sheet of help. Texts are texts and never formulas.
 */
final class ReturnWorkbook {

  private static final List<Column<?>> COLUMNS = RecordKind.RETURNS.layout().columns();

  private static final String TO_FILL_IN = "FFF2CC";
  private static final String HEADER = "D9E2EC";
  private static final String DAY = "yyyy-mm-dd";
  private static final String TEXT = "@";
  private static final int NARROW = 14;
  private static final int WIDE = 32;
  private static final int WIDEST = 70;

  private final Worksheet sheet;
  private final List<Cells> rows;

  private ReturnWorkbook(Worksheet sheet, List<Cells> rows) {
    this.sheet = sheet;
    this.rows = rows;
  }

  static void write(ReturnSheet sheet, List<String> cautions, Path file) throws IOException {
    try (OutputStream bytes = Files.newOutputStream(file);
        Workbook workbook = new Workbook(bytes, "leadline", "1.0")) {
      new ReturnWorkbook(workbook.newWorksheet(RecordKind.RETURNS.word()), sheet.rows()).fill();
      ReturnHelp.write(workbook.newWorksheet("help"), cautions);
    }
  }

  private void fill() {
    for (Column<?> column : COLUMNS) {
      int at = column.index();
      sheet.value(0, at, column.name());
      sheet.width(at, width(column));
      for (int row = 0; row < rows.size(); row++) {
        fill(row, column);
      }
    }
    for (int row = 0; row < rows.size(); row++) {
      Paper.height(sheet, row + 1, lines(rows.get(row)));
    }
    sheet.range(0, 0, 0, COLUMNS.size() - 1).style().bold().fillColor(HEADER).wrapText(true).set();
    Paper.asItIs(sheet);
    sheet.repeatRows(0);
    sheet.repeatCols(0, ReturnLayout.ABOUT.index());
    sheet.freezePane(ReturnLayout.ABOUT.index() + 1, 1);
    if (!rows.isEmpty()) {
      COLUMNS.forEach(this::offerWords);
    }
  }

  private static int lines(Cells cells) {
    return COLUMNS.stream()
        .filter(column -> cells.find(column).isPresent())
        .mapToInt(column -> Paper.lines(ReturnText.text(cells, column), width(column)))
        .max()
        .orElse(1);
  }

  private void fill(int row, Column<?> column) {
    Cells cells = rows.get(row);
    int line = row + 1;
    int at = column.index();
    cells
        .find(column)
        .ifPresent(
            value -> {
              if (value instanceof Long number) {
                sheet.value(line, at, number);
              } else {
                sheet.value(line, at, ReturnText.text(cells, column));
              }
            });
    var style =
        sheet.style(line, at).format(format(column)).wrapText(true).verticalAlignment("top");
    if (toFillIn(cells).contains(column)) {
      style.fillColor(TO_FILL_IN);
    }
    style.set();
  }

  /** Choices where the column has a closed set of words; any other is refused as it is typed. */
  private void offerWords(Column<?> column) {
    if (column.type() instanceof CellType.Word<?> word) {
      sheet
          .range(1, column.index(), rows.size(), column.index())
          .validateWithListByFormula('"' + String.join(",", words(word)) + '"')
          .allowBlank(true)
          .showErrorMessage(true)
          .errorTitle(column.name())
          .error("Choose one of the words of the list.");
    }
  }

  static Set<Column<?>> toFillIn(Cells row) {
    return Stream.concat(
            ReturnLayout.toFillIn(row).stream().map(Fill::cell),
            Stream.of(ReturnLayout.ANSWER, ReturnLayout.REMARK, ReturnLayout.ANSWERED_ON))
        .collect(Collectors.toSet());
  }

  private static String format(Column<?> column) {
    CellType<?> type = column.type();
    if (type instanceof CellType.Day || type instanceof CellType.Moment) {
      return DAY;
    }
    boolean isNumber = type instanceof CellType.Whole || type instanceof CellType.Hours;
    return isNumber ? "General" : TEXT;
  }

  private static int width(Column<?> column) {
    if (column.equals(ReturnLayout.QUESTION)) {
      return WIDEST;
    }
    return column.equals(ReturnLayout.SUBJECT) || column.equals(ReturnLayout.REMARK)
        ? WIDE
        : NARROW;
  }

  static <E extends Enum<E> & Written> List<String> words(CellType.Word<E> type) {
    return Written.words(type.words());
  }
}
