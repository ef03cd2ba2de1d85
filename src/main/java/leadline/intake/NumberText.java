package leadline.intake;

/** The shapes in which exports write numbers. */
final class NumberText {

  /** A number of so many digits fits a long, tenfold. */
  private static final int SAFE_DIGITS = 17;

  private NumberText() {}

  /** Digits, perhaps behind a minus. */
  static boolean isWhole(String text) {
    int from = afterMinus(text);
    return from < text.length() && afterDigits(text, from) == text.length();
  }

  /** Digits, perhaps behind a minus, perhaps with a point and digits behind. */
  static boolean isDecimal(String text) {
    int from = afterMinus(text);
    int point = afterDigits(text, from);
    if (point == from || point == text.length()) {
      return point > from;
    }
    return text.charAt(point) == '.'
        && point + 1 < text.length()
        && afterDigits(text, point + 1) == text.length();
  }

  static boolean isNegative(String text) {
    return text.charAt(0) == '-';
  }

  /** The value of a whole number; the farthest of its sign where it has too many digits. */
  static long whole(String text) {
    if (text.length() > SAFE_DIGITS) {
      return isNegative(text) ? Long.MIN_VALUE : Long.MAX_VALUE;
    }
    long value = digits(text, afterMinus(text), text.length());
    return isNegative(text) ? -value : value;
  }

  /** The tenths of a decimal without sign, rounded half up; the largest where it is too long. */
  static long tenths(String text) {
    int point = afterDigits(text, 0);
    if (point > SAFE_DIGITS) {
      return Long.MAX_VALUE;
    }
    long tenths = 10 * digits(text, 0, point);
    if (point + 1 < text.length()) {
      tenths += text.charAt(point + 1) - '0';
    }
    boolean roundsUp = point + 2 < text.length() && text.charAt(point + 2) >= '5';
    return roundsUp ? tenths + 1 : tenths;
  }

  private static int afterMinus(String text) {
    return isNegative(text) ? 1 : 0;
  }

  private static int afterDigits(String text, int from) {
    int at = from;
    while (at < text.length() && isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  static boolean isDigit(char letter) {
    return letter >= '0' && letter <= '9';
  }

  /** The value of digits that are known to be such. */
  static long digits(String text, int from, int to) {
    long value = 0;
    for (int at = from; at < to; at++) {
      value = 10 * value + text.charAt(at) - '0';
    }
    return value;
  }
}
