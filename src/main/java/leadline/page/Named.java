package leadline.page;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.publish.Numbers;
import leadline.quantity.ReportMonth;

/** Names and times in running text. */
final class Named {

  private static final char FIRST_STRONG_ISOLATE = '\u2068';
  private static final char POP_ISOLATE = '\u2069';
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("LLLL uuuu", Locale.ENGLISH);

  private Named() {}

  /** A name of the catalogue as words; engineers write NRV for the non-return valve. */
  static String words(String catalogueName) {
    return catalogueName.replace('-', ' ').replaceAll("\\bnrv\\b", "NRV");
  }

  /** The same at the start of a sentence. */
  static String sentence(String catalogueName) {
    String words = words(catalogueName);
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A ship's own words within a sentence, whose direction must not turn what follows. */
  static String data(String text) {
    return FIRST_STRONG_ISOLATE + text + POP_ISOLATE;
  }

  /** Such as {@code stuck, leaking or broken}. */
  static String anyOf(Stream<String> words) {
    return words.collect(Collectors.joining(", ")).replaceFirst(", ([^,]*)$", " or $1");
  }

  /** A count and what is counted, in the plural but for one. */
  static String counted(long count, String singular) {
    return Numbers.count(count) + " " + singular + (count == 1 ? "" : "s");
  }

  static String month(ReportMonth month) {
    return MONTH.format(month.month());
  }
}
