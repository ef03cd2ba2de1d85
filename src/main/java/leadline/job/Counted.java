package leadline.job;

import java.util.Locale;

/** A number with the word for what is counted. */
final class Counted {

  private Counted() {}

  static String of(long number, String word) {
    return String.format(Locale.ROOT, number == 1 ? "%,d %s" : "%,d %ss", number, word);
  }
}
