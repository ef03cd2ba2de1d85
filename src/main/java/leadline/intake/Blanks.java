package leadline.intake;

/** Blanks at the ends of cells: white space of any script, and the mark that opens some files. */
final class Blanks {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private Blanks() {}

  static boolean isBlank(String text) {
    return firstLetter(text) == text.length();
  }

  /** The text without blanks at either end; the same object where there are none. */
  static String trim(String text) {
    int from = firstLetter(text);
    int to = text.length();
    while (to > from && isBlank(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  private static int firstLetter(String text) {
    int at = 0;
    while (at < text.length() && isBlank(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isBlank(char letter) {
    if (letter > ' ' && letter < '\u0080') {
      return false;
    }
    return Character.isWhitespace(letter)
        || Character.isSpaceChar(letter)
        || letter == BYTE_ORDER_MARK;
  }
}
