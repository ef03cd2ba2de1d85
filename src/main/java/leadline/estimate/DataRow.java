package leadline.estimate;

import java.util.List;
import java.util.regex.Pattern;

/**
 * A line of a data file.
 *
 * @param line counted from 1, the header's
 * @param fields as many as the header has columns
 */
record DataRow(DataHeader header, long line, List<String> fields) {

  private static final Pattern DECIMAL =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");

  /** Beyond it, doubles no longer hold every whole number. */
  private static final double LARGEST_COUNT = 0x1p53;

  /** Whether the file has the column and this row says something there. */
  boolean states(String column) {
    return header.has(column) && !word(column).isEmpty();
  }

  /** The text of a column that the file has; empty where the row says nothing. */
  String word(String column) {
    return fields.get(header.columns().indexOf(column)).strip();
  }

  /** Whether there is a finite number in a column that the file has. */
  boolean isNumber(String column) {
    String text = word(column);
    return DECIMAL.matcher(text).matches() && Double.isFinite(Double.parseDouble(text));
  }

  /** The finite number in a column that the file has. */
  double number(String column) {
    String text = word(column);
    if (!isNumber(column)) {
      throw impossible(column, text.isEmpty() ? "a number is missing" : "no number: " + text);
    }
    return Double.parseDouble(text);
  }

  double positive(String column) {
    double number = number(column);
    if (!(number > 0)) {
      throw impossible(column, "must be more than 0: " + word(column));
    }
    return number;
  }

  double notNegative(String column) {
    double number = number(column);
    if (!(number >= 0)) {
      throw impossible(column, "must be 0 or more: " + word(column));
    }
    return number;
  }

  /** A whole number, 0 or more. */
  long count(String column) {
    double number = notNegative(column);
    if (number != Math.rint(number) || number > LARGEST_COUNT) {
      throw impossible(column, "must be a whole number: " + word(column));
    }
    return (long) number;
  }

  UnusableData impossible(String column, String why) {
    return DataHeader.unusable(header.file(), line, column, why);
  }
}
