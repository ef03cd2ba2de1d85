package leadline.history;

import java.time.Instant;
import java.util.Optional;
import leadline.fleet.Reading;
import leadline.quantity.RunningHours;

/**
 * What a machine's counter can show.
 *
 * @param full what it shows when full, and one more; none where its digits are not known
 */
record Counter(Optional<RunningHours> full) {

  static Counter ofDigits(Optional<Integer> digits) {
    return new Counter(digits.map(known -> RunningHours.ofHours(Math.round(Math.pow(10, known)))));
  }

  /** Hours run from one reading to a later one; none where the machine cannot have run so. */
  Optional<RunningHours> increment(Reading from, Reading to) {
    return increment(from.hours(), to.hours())
        .filter(hours -> isPossible(hours, from.at(), to.at()));
  }

  /** As the figures are, through a roll-over where they fall and the counter can have been full. */
  private Optional<RunningHours> increment(RunningHours from, RunningHours to) {
    RunningHours plain = to.minus(from);
    return plain.isNegative()
        ? full.filter(modulus -> modulus.isAbove(from)).map(plain::plus)
        : Optional.of(plain);
  }

  /** Whether a figure that fell can be that of a counter begun at zero since. */
  boolean mayBeNew(Reading from, Reading to) {
    return from.hours().isAbove(to.hours()) && isPossible(to.hours(), from.at(), to.at());
  }

  /** A day of ship's time may have 25 hours. */
  static boolean isPossible(RunningHours increment, Instant from, Instant to) {
    return !increment.isNegative() && !increment.isAbove(most(from, to));
  }

  /** The most that can be run: 25 hours in a day. */
  static RunningHours most(Instant from, Instant to) {
    return RunningHours.ofTenths(RunningHours.elapsedBetween(from, to).tenths() * 25 / 24);
  }
}
