package leadline.publish;

import java.util.Locale;

/** Numbers as people read them: grouped by thousands, no more digits than bear meaning. */
public final class Numbers {

  private Numbers() {}

  public static String count(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }

  public static String hours(double hours) {
    return wholeHours(hours) + " h";
  }

  /** Where the unit stands beside them. */
  public static String wholeHours(double hours) {
    return String.format(Locale.ROOT, "%,.0f", hours);
  }

  /** Three significant digits down to hundredths. */
  public static String rate(double rate) {
    String pattern = rate >= 100 ? "%,.0f" : rate >= 10 ? "%.1f" : "%.2f";
    return String.format(Locale.ROOT, pattern, rate);
  }

  public static String share(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}
