package leadline.publish;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.Collectors;
import leadline.fleet.FormulaGuard;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;

/**
 * A table as CSV after RFC 4180, in UTF-8 without a byte order mark and with line feeds. An empty
 * field is an absent value.
 */
public final class CsvTable {

  /** What a reader of the CSV must know about texts; the Parquet files hold them unguarded. */
  static final String GUARD_IN_WORDS =
      "In CSV a text that begins with = + - @ ' a tab or a carriage return has an apostrophe put"
          + " before it, so that no spreadsheet takes it for a formula: of a text that begins with"
          + " an apostrophe, drop that one. Numbers are never guarded.";

  private static final double SMALLEST_PLAIN = 1e-6;
  private static final double LARGEST_PLAIN = 1e15;

  private CsvTable() {}

  static void write(PublishedTable table, Path file) throws IOException {
    try (Writer csv = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      csv.write(
          table.spec().columns().stream()
              .map(TableColumn::name)
              .collect(Collectors.joining(",", "", "\n")));
      for (TableRow row : table.rows()) {
        csv.write(
            table.spec().columns().stream()
                .map(column -> field(row, column))
                .collect(Collectors.joining(",", "", "\n")));
      }
    }
  }

  private static String field(TableRow row, TableColumn<?> column) {
    Optional<?> value = row.find(column);
    return value.map(present -> text(CellKind.of(column), present)).orElse("");
  }

  private static String text(CellKind kind, Object value) {
    return switch (kind) {
      case TEXT -> quoted(FormulaGuard.on((String) value));
      case COUNT -> Long.toString((Long) value);
      case REAL -> shortest((Double) value);
      case MOMENT -> ((Instant) value).truncatedTo(ChronoUnit.MICROS).toString();
    };
  }

  static String quoted(String text) {
    boolean plain = text.chars().noneMatch(c -> c == '"' || c == ',' || c == '\n' || c == '\r');
    return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }

  /**
   * The shortest decimal that reads back to the same double, with an exponent only below a
   * millionth and from a thousand million million on. {@code Double.toString} of Java 17 is not
   * always the shortest.
   */
  public static String shortest(double number) {
    double magnitude = Math.abs(number);
    if (magnitude == 0) {
      return "0";
    }
    String digits = NumberOutput.toString(number, true);
    return magnitude >= SMALLEST_PLAIN && magnitude < LARGEST_PLAIN
        ? new BigDecimal(digits).stripTrailingZeros().toPlainString()
        : digits;
  }
}
