package leadline.publish;

import java.util.List;
import leadline.fleet.CellType;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import org.dhatim.fastexcel.Worksheet;

/** The sheet of help beside a return sheet: how to fill it in, its columns, and the cautions. */
final class ReturnHelp {

  private static final int WIDE = 30;
  private static final int WIDEST = 100;

  private static final List<String> HOW =
      List.of(
          "Fill in the coloured cells of the sheet returns, as far as you can, and send the file"
              + " back under its name. A row that you leave empty means nothing.",
          "A question (row Q-...): if the record is right as it stands, answer as-written and say"
              + " why under remark; if not, fill in what is right; if there was no such work,"
              + " answer cancelled.",
          "An overhaul that falls due (row D-...), once it is done: day, hours, reason and serials in"
              + " its own row, and in the row of each part whether it was opened, what was found"
              + " before any work, and what was done. A part that was not opened: opened no, and"
              + " nothing under found.",
          "If your own records number the overhaul, write that number under overhaul in its row and"
              + " in those of its parts, so that it is not counted twice.",
          "In every row that you fill in, write the day under answered_on. What your records say of"
              + " a later day stands before it.",
          "An empty cell changes nothing. Leave the other cells as they are.");

  private ReturnHelp() {}

  static void write(Worksheet sheet, List<String> cautions) {
    int row = 0;
    for (String line : HOW) {
      add(sheet, row++, "", line);
    }
    row++;
    for (Column<?> column : RecordKind.RETURNS.layout().columns()) {
      add(sheet, row++, column.name(), column.meaning() + words(column));
    }
    row++;
    for (String caution : cautions) {
      add(sheet, row++, "", caution);
    }
    Paper.oneSheetWide(sheet);
    sheet.width(0, WIDE);
    sheet.width(1, WIDEST);
  }

  private static void add(Worksheet sheet, int row, String name, String text) {
    if (!name.isEmpty()) {
      sheet.value(row, 0, name);
    }
    sheet.value(row, 1, text);
    Paper.height(sheet, row, Paper.lines(text, WIDEST));
    sheet.style(row, 1).wrapText(true).verticalAlignment("top").set();
  }

  private static String words(Column<?> column) {
    return column.type() instanceof CellType.Word<?> word
        ? " (" + String.join(", ", ReturnWorkbook.words(word)) + ")"
        : "";
  }
}
