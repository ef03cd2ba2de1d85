package leadline.publish;

import java.util.Locale;
import java.util.regex.Pattern;

/** Text as a cell of a workbook can hold it: always text, never a formula. */
final class WorkbookText {

  /** What ECMA-376 and spreadsheets allow in one cell, in UTF-16 units. */
  static final int LONGEST = 32_767;

  static final String IN_WORDS =
      "Text is kept as text, also where it begins with = + - or @. A character that a workbook"
          + " cannot hold stands as its picture (such as \u2400) or as \uFFFD; a text of more than"
          + " 32,767 characters is cut and says so at its end. The CSV and Parquet files beside"
          + " this workbook have such texts whole.";

  /** A text that looks so is read as an escaped character (ECMA-376, part 1, 22.9.2.19). */
  private static final Pattern LIKE_AN_ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private static final char FIRST_PICTURE = '\u2400';
  private static final char UNKNOWN = '\uFFFD';

  private WorkbookText() {}

  static String of(String text) {
    return cut(held(LIKE_AN_ESCAPE.matcher(text).replaceAll("_x005F_")));
  }

  private static String held(String text) {
    StringBuilder held = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              if (point == '\r') {
                held.append("_x000D_"); // plain, it would be read back as a line feed
              } else if (point == '\t' || point == '\n' || isCharacterOfXml(point)) {
                held.appendCodePoint(point);
              } else {
                held.append(point < ' ' ? (char) (FIRST_PICTURE + point) : UNKNOWN);
              }
            });
    return held.toString();
  }

  /** XML 1.0, production 2, but for tab and line ends. */
  private static boolean isCharacterOfXml(int point) {
    return (point >= ' ' && point <= 0xD7FF)
        || (point >= 0xE000 && point <= 0xFFFD)
        || point >= 0x10000;
  }

  private static String cut(String text) {
    if (text.length() <= LONGEST) {
      return text;
    }
    String mark = String.format(Locale.ROOT, " [cut: %,d characters in all]", text.length());
    int end = LONGEST - mark.length();
    return text.substring(0, Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end)
        + mark;
  }
}
