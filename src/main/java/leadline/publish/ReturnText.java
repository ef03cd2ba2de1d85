package leadline.publish;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.FormulaGuard;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;

/** A return sheet as CSV of the plain layout, its texts guarded against spreadsheets. */
final class ReturnText {

  /** Without it, spreadsheet programs take UTF-8 for the letters of their own country. */
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private ReturnText() {}

  static void write(ReturnSheet sheet, Path file) throws IOException {
    List<Column<?>> columns = RecordKind.RETURNS.layout().columns();
    try (Writer csv = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      csv.append(BYTE_ORDER_MARK);
      csv.write(columns.stream().map(Column::name).collect(Collectors.joining(",", "", "\r\n")));
      for (Cells row : sheet.rows()) {
        csv.write(
            columns.stream()
                .map(column -> CsvTable.quoted(FormulaGuard.on(text(row, column))))
                .collect(Collectors.joining(",", "", "\r\n")));
      }
    }
  }

  /** The cell as the plain layout writes it; empty where the ship is to fill it in. */
  static String text(Cells row, Column<?> column) {
    return row.find(column)
        .map(value -> value instanceof Written word ? word.word() : value.toString())
        .orElse("");
  }
}
