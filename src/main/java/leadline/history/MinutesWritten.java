package leadline.history;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.Reading;
import leadline.history.LogProblem.MinutesAsDecimals;

/** Asks where the figures behind the point are minutes, which shows only in a log as a whole. */
final class MinutesWritten {

  /** Of so many figures with a fraction, chance leaves out .6 to .9 once in 700 million times. */
  private static final int FEWEST_FRACTIONS = 40;

  /** The tenths that minutes from .00 to .59 make, rounded. */
  private static final Set<Long> OF_MINUTES = Set.of(1L, 2L, 3L, 4L, 5L);

  private MinutesWritten() {}

  /**
   * @param log of one machine, in time
   */
  static Optional<MinutesAsDecimals> question(List<Reading> log) {
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
}
