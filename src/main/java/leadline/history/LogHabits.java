package leadline.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.Reading;
import leadline.fleet.ReadingKind;
import leadline.history.LogProblem.MinutesAsDecimals;
import leadline.history.LogProblem.TotalRepeated;
import leadline.quantity.RunningHours;

/** Asks about habits that show only in a machine's log as a whole. */
final class LogHabits {

  /** Of so many figures with a fraction, chance leaves out .6 to .9 once in 700 million times. */
  private static final int FEWEST_FRACTIONS = 40;

  /** The tenths that minutes from .00 to .59 make, rounded. */
  private static final Set<Long> OF_MINUTES = Set.of(1L, 2L, 3L, 4L, 5L);

  /** Copies are told from averages by being rarer than one in so many. */
  private static final long FEWEST_BETWEEN_COPIES = 10;

  private LogHabits() {}

  /**
   * @param log of one machine, in time
   */
  static List<ReadingProblem> questions(List<Reading> log) {
    List<ReadingProblem> questions = new ArrayList<>(repeatedTotals(log));
    minutes(log).ifPresent(questions::add);
    return questions;
  }

  private static Optional<ReadingProblem> minutes(List<Reading> log) {
    List<Long> fractions =
        log.stream()
            .map(reading -> reading.hours().tenths() % 10)
            .filter(tenths -> tenths != 0)
            .toList();
    boolean isOfMinutes =
        fractions.size() >= FEWEST_FRACTIONS
            && fractions.stream().collect(Collectors.toSet()).equals(OF_MINUTES);
    return isOfMinutes
        ? Optional.of(
            new MinutesAsDecimals(
                log.get(0).machine(), log.get(0).at(), fractions.size(), log.get(0).origin()))
        : Optional.empty();
  }

  /**
   * Two months alike to a tenth are hardly ever two months' running, unless the ship writes
   * averages: then many are alike.
   */
  private static List<ReadingProblem> repeatedTotals(List<Reading> log) {
    List<ReadingProblem> repeated = new ArrayList<>();
    long totals = log.stream().filter(LogHabits::isTotal).count();
    for (int i = 1; i < log.size(); i++) {
      Reading reading = log.get(i);
      Reading before = log.get(i - 1);
      if (isTotal(before)
          && reading.hours().equals(before.hours())
          && isPartOf(reading, RunningHours.elapsedBetween(before.at(), reading.at()))) {
        repeated.add(
            new TotalRepeated(
                reading.machine(), before.at(), reading.at(), reading.hours(), reading.origin()));
      }
    }
    return repeated.size() * FEWEST_BETWEEN_COPIES < totals ? repeated : List.of();
  }

  /** A machine that ran all the time did so in every month. */
  private static boolean isPartOf(Reading total, RunningHours elapsed) {
    return isTotal(total) && elapsed.isAbove(total.hours());
  }

  private static boolean isTotal(Reading reading) {
    return reading.kind() == ReadingKind.TOTAL && reading.hours().isAbove(RunningHours.ZERO);
  }
}
