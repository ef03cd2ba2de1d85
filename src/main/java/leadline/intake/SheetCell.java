package leadline.intake;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;

/**
 * What a cell of a sheet says, as an export would write it. A spreadsheet keeps dates as numbers of
 * days; only the cell's number format tells them from other numbers.
 */
final class SheetCell {

  /** Texts, escaped letters and colours of a number format, which say nothing of what it shows. */
  private static final Pattern DECORATION = Pattern.compile("\"[^\"]*\"|\\\\.|\\[[^\\]]*]");

  private static final Pattern DATE_LETTER = Pattern.compile("[ymdhsYMDHS]");

  /** Formats of dates in the scripts of East Asia, which a file names by number alone. */
  private static final Pattern EASTERN_DATE = Pattern.compile("2[7-9]|3[0-6]|5[0-8]");

  private SheetCell() {}

  static String text(Cell cell) {
    Object value = cell.getValue();
    if (!(value instanceof BigDecimal number)) {
      return cell.getText();
    }
    return isDate(cell) ? date(cell.asDate()) : number.stripTrailingZeros().toPlainString();
  }

  private static boolean isDate(Cell cell) {
    Optional<String> format = Optional.ofNullable(cell.getDataFormatString());
    return format
        .map(shown -> DATE_LETTER.matcher(DECORATION.matcher(shown).replaceAll("")).find())
        .orElseGet(() -> EASTERN_DATE.matcher(String.valueOf(cell.getDataFormatId())).matches());
  }

  private static String date(LocalDateTime moment) {
    return moment.toLocalTime().equals(LocalTime.MIDNIGHT)
        ? moment.toLocalDate().toString()
        : moment.toString();
  }
}
