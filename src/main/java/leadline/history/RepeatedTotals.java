package leadline.history;

import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import leadline.fleet.Reading;
import leadline.fleet.ReadingKind;
import leadline.history.HourMark.Doubt;
import leadline.history.LogProblem.TotalRepeated;
import leadline.quantity.RunningHours;

/**
 * Totals that are very likely those of the time before, written on: two months alike to a tenth are
 * hardly ever two months' running, unless the ship writes averages; then many are alike. Common
 * practice, no source.
 */
final class RepeatedTotals {

  /** Copies are told from averages by being rarer than one in so many. */
  private static final long FEWEST_BETWEEN_COPIES = 10;

  private final List<Copy> copies;

  private RepeatedTotals(List<Copy> copies) {
    this.copies = copies;
  }

  private record Copy(Reading before, Reading total) {

    boolean isOne() {
      RunningHours elapsed = RunningHours.elapsedBetween(before.at(), total.at());
      return isTotal(before)
          && isTotal(total)
          && total.hours().equals(before.hours())
          // a machine that ran all the time did so in every month
          && elapsed.isAbove(total.hours());
    }

    TotalRepeated question() {
      return new TotalRepeated(
          total.machine(), before.at(), total.at(), total.hours(), total.origin());
    }
  }

  /**
   * @param log of one machine, in time
   */
  static RepeatedTotals of(List<Reading> log) {
    List<Copy> copies =
        IntStream.range(1, log.size())
            .mapToObj(i -> new Copy(log.get(i - 1), log.get(i)))
            .filter(Copy::isOne)
            .toList();
    long totals = log.stream().filter(RepeatedTotals::isTotal).count();
    return new RepeatedTotals(copies.size() * FEWEST_BETWEEN_COPIES < totals ? copies : List.of());
  }

  List<TotalRepeated> questions() {
    return copies.stream().map(Copy::question).toList();
  }

  boolean has(Reading total) {
    return copies.stream().anyMatch(copy -> copy.total().equals(total));
  }

  /** Of the time that a copied total is of, the machine may have run all or nothing. */
  static Doubt doubt(Reading copied, Instant since, Doubt before) {
    RunningHours elapsed = RunningHours.elapsedBetween(since, copied.at());
    return before
        .interpolated(copied.hours())
        .unseen(elapsed.minus(copied.hours()).max(RunningHours.ZERO))
        .unsure(copied.hours());
  }

  private static boolean isTotal(Reading reading) {
    return reading.kind() == ReadingKind.TOTAL && reading.hours().isAbove(RunningHours.ZERO);
  }
}
