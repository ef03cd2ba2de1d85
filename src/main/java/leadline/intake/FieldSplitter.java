package leadline.intake;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.StringArrayHandler;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits rows with balanced quotes into fields, many rows at a time. Each is handed to the CSV
 * reader with a CR behind it: version 4.1.0 of the reader takes an LF there for the second half of
 * a CR LF if the last field is quoted and holds a CR alone, and drops that field.
 */
final class FieldSplitter {

  private FieldSplitter() {}

  /** The fields of each row, in order. */
  static List<String[]> split(List<TextRow> rows) throws IOException {
    StringBuilder text = new StringBuilder();
    rows.forEach(row -> text.append(row.raw()).append('\r'));
    List<String[]> fields = new ArrayList<>(rows.size());
    try (CsvReader<String[]> reader =
        CsvReader.builder()
            .commentStrategy(CommentStrategy.NONE)
            .skipEmptyLines(false)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .build(
                StringArrayHandler.of(limits -> limits.maxFields(LineCutter.MOST_CHARACTERS + 1)),
                text.toString())) {
      reader.forEach(fields::add);
    }
    if (fields.size() != rows.size()) {
      throw new IllegalStateException(
          rows.size()
              + " rows were split into "
              + fields.size()
              + " from line "
              + rows.get(0).line());
    }
    return fields;
  }
}
