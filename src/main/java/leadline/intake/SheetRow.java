package leadline.intake;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.dhatim.fastexcel.reader.Row;

/**
 * A row of a sheet, its cells as an export would write them.
 *
 * @param line the row's number in the sheet, from 1
 */
record SheetRow(long line, List<String> cells) {

  static SheetRow of(Row row) {
    return new SheetRow(
        row.getRowNum(),
        IntStream.range(0, row.getCellCount())
            .mapToObj(column -> row.getOptionalCell(column).map(SheetCell::text).orElse(""))
            .toList());
  }

  boolean isBlank() {
    return cells.stream().allMatch(Blanks::isBlank);
  }

  /** How many cells there are up to the last that is not blank. */
  int width() {
    int width = cells.size();
    while (width > 0 && Blanks.isBlank(cells.get(width - 1))) {
      width--;
    }
    return width;
  }

  /** With at least so many cells, and no blank ones behind those. */
  SheetRow withWidth(int least) {
    List<String> fitted = new ArrayList<>(cells.subList(0, width()));
    fitted.addAll(Collections.nCopies(Math.max(0, least - fitted.size()), ""));
    return new SheetRow(line, fitted);
  }

  TextRow text() {
    return new TextRow(line, raw(), List.of());
  }

  /** The row as a line of CSV. */
  String raw() {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().build(text)) {
      writer.writeRecord(cells);
    } catch (IOException e) {
      throw new IllegalStateException("a text in memory takes any line", e);
    }
    return Blanks.trim(text.toString());
  }
}
