package leadline.publish;

import java.util.Locale;

/** Numbers as people read them: grouped by thousands, no more digits than bear meaning. */
final class Numbers {

  private Numbers() {}

  static String count(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }

  static String hours(double hours) {
    return String.format(Locale.ROOT, "%,.0f h", hours);
  }

  /** Three significant digits down to hundredths. */
  static String rate(double rate) {
    String pattern = rate >= 100 ? "%,.0f" : rate >= 10 ? "%.1f" : "%.2f";
    return String.format(Locale.ROOT, pattern, rate);
  }

  static String share(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}
