package leadline.history;

import java.util.LinkedHashMap;
import java.util.Map;
import leadline.quantity.RunningHours;

/**
 * What a figure may have been before one slip of the pen: two neighbouring digits that changed
 * places, a digit lost, added or misread, the point one to three places off. Which slips are usual
 * is common practice, no source.
 */
final class DigitSlips {

  private static final int MOST_PLACES_OFF = 3;
  private static final long FULL = RunningHours.ofHours(1_000_000).tenths();

  private final String digits;
  private final long unit;
  private final boolean isTenthLost;

  /** The tenths of which a figure with another point is a multiple. */
  private final long smallest;

  private final Map<RunningHours, HourRule> origins = new LinkedHashMap<>();

  private DigitSlips(RunningHours written, RunningHours usual) {
    this.unit = isWhole(written) ? 10 : 1;
    this.digits = Long.toString(written.tenths() / unit);
    this.isTenthLost = isWhole(written) && !isWhole(usual);
    this.smallest = isWhole(usual) ? 10 : 1;
  }

  /**
   * Every other figure from which one slip leads to the one written, with the first such slip. A
   * whole figure where tenths are usual has lost its point rather than gained a digit, unless that
   * stands twice; and where whole hours are usual, no tenth was lost.
   *
   * @param usual a figure that the log has beside it
   */
  static Map<RunningHours, HourRule> behind(RunningHours written, RunningHours usual) {
    DigitSlips slips = new DigitSlips(written, usual);
    slips.collect(written.tenths());
    slips.origins.remove(written);
    return slips.origins;
  }

  private void collect(long tenths) {
    long factor = 1;
    for (int off = 1; off <= MOST_PLACES_OFF; off++) {
      factor *= 10;
      put(tenths * factor, HourRule.TENFOLD);
      if (tenths % (factor * smallest) == 0) {
        put(tenths / factor, HourRule.TENFOLD);
      }
    }
    for (int place = 0; place < digits.length(); place++) {
      transpose(place);
      dropAt(place);
    }
    for (int place = 0; place <= digits.length(); place++) {
      for (char digit = '0'; digit <= '9'; digit++) {
        insert(place, digit);
        replace(place, digit);
      }
    }
  }

  private void transpose(int place) {
    if (place + 1 < digits.length()) {
      put(
          digits.substring(0, place)
              + digits.charAt(place + 1)
              + digits.charAt(place)
              + digits.substring(place + 2),
          HourRule.TRANSPOSED);
    }
  }

  private static boolean isWhole(RunningHours figure) {
    return figure.tenths() % 10 == 0;
  }

  private void dropAt(int place) {
    boolean isTwice = place > 0 && digits.charAt(place) == digits.charAt(place - 1);
    if (digits.length() > 1 && (isTwice || !isTenthLost)) {
      put(digits.substring(0, place) + digits.substring(place + 1), HourRule.DIGIT_ADDED);
    }
  }

  private void insert(int place, char digit) {
    put(digits.substring(0, place) + digit + digits.substring(place), HourRule.DIGIT_LOST);
  }

  private void replace(int place, char digit) {
    if (place < digits.length()) {
      put(digits.substring(0, place) + digit + digits.substring(place + 1), HourRule.DIGIT_MISREAD);
    }
  }

  private void put(String figure, HourRule rule) {
    put(Long.parseLong(figure) * unit, rule);
  }

  private void put(long tenths, HourRule rule) {
    if (tenths < FULL) {
      origins.putIfAbsent(RunningHours.ofTenths(tenths), rule);
    }
  }
}
