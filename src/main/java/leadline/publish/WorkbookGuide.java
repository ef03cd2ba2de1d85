package leadline.publish;

import java.util.List;
import java.util.stream.IntStream;
import leadline.summary.TableColumn;
import leadline.summary.Verdict;
import org.dhatim.fastexcel.Worksheet;

/** The first sheet: what the workbook holds, how to read it, and the cautions. */
final class WorkbookGuide {

  private static final int[] WIDTHS = {26, 34, 18, 90};
  private static final int MEANING = 3;

  private final Worksheet sheet;
  private final Issue issue;
  private int row;

  WorkbookGuide(Worksheet sheet, Issue issue) {
    this.sheet = sheet;
    this.issue = issue;
  }

  void write() {
    Paper.oneSheetWide(sheet);
    for (int column = 0; column < WIDTHS.length; column++) {
      sheet.width(column, WIDTHS[column]);
    }
    heading("Overhauls, findings and part lives of the fleet, " + issue.manifest().month());
    line("Run", issue.manifest().run());
    line("Known at", issue.manifest().knownAt().toString());
    line("Program", issue.manifest().programVersion());
    heading("Cautions");
    issue.cautions().forEach(this::paragraph);
    heading("How to read it");
    paragraph(
        "An empty cell is a value that the data do not support. Columns that end in _lo95 and _hi95"
            + " are the two-sided 95 % limits of the figure before them. Moments are UTC.");
    paragraph(WorkbookText.IN_WORDS);
    heading("Verdicts");
    for (Verdict verdict : Verdict.values()) {
      line(verdict.word(), verdict.meaning());
    }
    heading("Sheets");
    for (PublishedTable table : issue.tables()) {
      line(
          table.spec().name(),
          Numbers.count(table.rows().size()) + " rows",
          table.spec().meaning());
    }
    heading("Columns");
    issue.tables().forEach(this::columns);
  }

  private void columns(PublishedTable table) {
    for (TableColumn<?> column : table.spec().columns()) {
      sheet.range(row, 0, row, MEANING).style().verticalAlignment("top").wrapText(true).set();
      Paper.height(sheet, row, Paper.lines(column.meaning(), WIDTHS[MEANING]));
      cells(List.of(table.spec().name(), column.name(), unit(column), column.meaning()));
    }
  }

  private static String unit(TableColumn<?> column) {
    return column.unit().equals("1") ? "" : column.unit();
  }

  private void heading(String text) {
    row++;
    sheet.style(row, 0).bold().fontSize(12).set();
    cells(List.of(text));
  }

  private void line(String name, String... rest) {
    sheet.value(row, 0, WorkbookText.of(name));
    sheet.value(row, 1, WorkbookText.of(String.join(": ", rest)));
    row++;
  }

  private void paragraph(String text) {
    sheet.range(row, 0, row, WIDTHS.length - 1).merge();
    sheet
        .range(row, 0, row, WIDTHS.length - 1)
        .style()
        .wrapText(true)
        .verticalAlignment("top")
        .set();
    Paper.height(sheet, row, Paper.lines(text, IntStream.of(WIDTHS).sum()));
    cells(List.of(text));
  }

  private void cells(List<String> texts) {
    for (int column = 0; column < texts.size(); column++) {
      sheet.value(row, column, WorkbookText.of(texts.get(column)));
    }
    row++;
  }
}
