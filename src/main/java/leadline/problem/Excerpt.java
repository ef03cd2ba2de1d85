package leadline.problem;

/** Text of an export as a sentence quotes it: in quotes, on one line, shortened. */
final class Excerpt {

  private static final int LONGEST = 80;

  private Excerpt() {}

  static String of(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    int shown = Math.min(text.length(), LONGEST);
    if (shown < text.length() && Character.isHighSurrogate(text.charAt(shown - 1))) {
      shown--;
    }
    for (int i = 0; i < shown; i++) {
      char letter = text.charAt(i);
      if (Character.isISOControl(letter)) {
        quoted.append(String.format("\\x%02X", (int) letter));
      } else {
        quoted.append(letter);
      }
    }
    return quoted.append(shown < text.length() ? "...\"" : "\"").toString();
  }
}
