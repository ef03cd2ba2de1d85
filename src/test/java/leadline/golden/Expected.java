package leadline.golden;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows that the table written by hand says must come out. */
final class Expected {

  private static final Path FOLDER =
      Path.of(System.getProperty("leadline.home", "."), "src/test/resources/golden");

  /** The hand's results have ten significant digits. */
  private static final double RELATIVE = 1e-9;

  /** What is left of a difference of shares that the hand has as 0. */
  private static final double ROUNDING = 1e-15;

  private Expected() {}

  static List<Map<String, String>> rows(String table) {
    return read(FOLDER.resolve(table + ".csv"));
  }

  static List<Map<String, String>> read(Path file) {
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(file)) {
      return csv.stream()
          .<Map<String, String>>map(row -> new LinkedHashMap<>(row.getFieldsAsMap()))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Equal as words, or as numbers to the digits that the hand wrote. */
  static boolean same(String expected, String actual) {
    if (expected.equals(actual)) {
      return true;
    }
    try {
      double hand = Double.parseDouble(expected);
      return Math.abs(hand - Double.parseDouble(actual))
          <= Math.max(RELATIVE * Math.abs(hand), ROUNDING);
    } catch (NumberFormatException e) {
      return false;
    }
  }
}
