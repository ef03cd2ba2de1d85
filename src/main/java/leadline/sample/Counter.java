package leadline.sample;

import java.util.Optional;
import leadline.quantity.RunningHours;

/**
 * What a machine's counter shows.
 *
 * @param base tenths shown when the machine's days in the sample began
 * @param digits whole digits; one hour after all nines it shows zero
 */
record Counter(long base, int digits, Optional<Replacement> replaced) {

  /** A new counter, from zero, at the end of a day by which the machine had turned so much. */
  record Replacement(int day, long tenths, Handover handover) {}

  /** Whether anyone read the old counter when it was taken off. */
  enum Handover {
    READ,
    UNREAD,
    /** Nor did anyone write that the counter was changed. */
    UNDECLARED
  }

  RunningHours shown(long tenths) {
    return RunningHours.ofTenths(
        replaced
            .filter(replacement -> tenths > replacement.tenths())
            .map(replacement -> tenths - replacement.tenths())
            .orElseGet(() -> (base + tenths) % full()));
  }

  private long full() {
    long full = 10;
    for (int digit = 0; digit < digits; digit++) {
      full *= 10;
    }
    return full;
  }
}
