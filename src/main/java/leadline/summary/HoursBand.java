package leadline.summary;

import java.io.Serializable;
import leadline.fleet.Clock;
import leadline.fleet.Part;
import leadline.quantity.RunningHours;

/**
 * A band of hours since new, its lower end included, its upper end not.
 *
 * @param number 0 for the youngest
 */
record HoursBand(long number) implements Comparable<HoursBand>, Serializable {

  static final String ALL = "all";

  static final String UNKNOWN = "unknown";

  static final long WIDTH_H = 4_000;

  /** The band in which a part of this age falls. */
  static HoursBand of(RunningHours age) {
    return new HoursBand(Math.floorDiv(age.tenths(), RunningHours.ofHours(WIDTH_H).tenths()));
  }

  /** Bands of hours tell nothing of a part that ages by another clock. */
  static Verdict verdict(String label, Part part, Verdict ofOpenings) {
    boolean isBand = !label.equals(ALL) && !label.equals(UNKNOWN);
    return isBand && part.clock() != Clock.HOURS ? Verdict.WRONG_CLOCK : ofOpenings;
  }

  /** Such as {@code 4000-8000}. */
  String label() {
    return number * WIDTH_H + "-" + (number + 1) * WIDTH_H;
  }

  @Override
  public int compareTo(HoursBand other) {
    return Long.compare(number, other.number);
  }
}
