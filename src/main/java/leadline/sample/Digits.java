package leadline.sample;

import java.util.stream.IntStream;
import leadline.quantity.RunningHours;

/** Slips in the digits of a figure. The figure's point stays where it was. */
final class Digits {

  private Digits() {}

  /** Whether two neighbouring digits differ. */
  static boolean differ(RunningHours figure) {
    return swappable(figure).length > 0;
  }

  /** Two neighbouring digits that differ change places. */
  static RunningHours transposed(RunningHours figure, Draw draw) {
    int[] places = swappable(figure);
    return swapped(figure, places[draw.below(places.length)]);
  }

  /** The first two neighbouring digits that differ change places. */
  static RunningHours firstTransposed(RunningHours figure) {
    int[] places = swappable(figure);
    return places.length == 0 ? figure : swapped(figure, places[0]);
  }

  /** One of the digits before the point is left out. */
  static RunningHours lost(RunningHours figure, Draw draw) {
    StringBuilder digits = new StringBuilder(digits(figure));
    digits.deleteCharAt(draw.below(digits.length() - 1));
    return RunningHours.ofTenths(Long.parseLong(digits.toString()));
  }

  /** One of the digits before the point is written twice. */
  static RunningHours added(RunningHours figure, Draw draw) {
    StringBuilder digits = new StringBuilder(digits(figure));
    int place = draw.below(digits.length() - 1);
    digits.insert(place, digits.charAt(place));
    return RunningHours.ofTenths(Long.parseLong(digits.toString()));
  }

  private static RunningHours swapped(RunningHours figure, int place) {
    char[] digits = digits(figure).toCharArray();
    char digit = digits[place];
    digits[place] = digits[place + 1];
    digits[place + 1] = digit;
    return RunningHours.ofTenths(Long.parseLong(new String(digits)));
  }

  private static int[] swappable(RunningHours figure) {
    String digits = digits(figure);
    return IntStream.range(0, digits.length() - 1)
        .filter(place -> digits.charAt(place) != digits.charAt(place + 1))
        .toArray();
  }

  private static String digits(RunningHours figure) {
    return Long.toString(figure.tenths());
  }
}
