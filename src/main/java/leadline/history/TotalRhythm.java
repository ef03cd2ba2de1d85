package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import leadline.fleet.Reading;
import leadline.fleet.ReadingKind;
import leadline.quantity.RunningHours;

/**
 * How often a log gives hours run, by which a total after a gap is told that may be of the last of
 * its intervals only: one that comes more than 45 days, and more than one and a half of the usual
 * intervals, after the reading before. Common practice, no source.
 *
 * @param usual the median time from the reading before to a total; a month where there are fewer
 *     than three
 */
record TotalRhythm(Duration usual) {

  private static final int LEAST_INTERVALS = 3;
  private static final Duration MONTH = Duration.ofDays(31);

  /**
   * @param log of one machine, in time
   */
  static TotalRhythm of(List<Reading> log) {
    List<Duration> intervals =
        IntStream.range(1, log.size())
            .filter(i -> log.get(i).kind() == ReadingKind.TOTAL)
            .mapToObj(i -> Duration.between(log.get(i - 1).at(), log.get(i).at()))
            .sorted()
            .toList();
    return new TotalRhythm(
        intervals.size() < LEAST_INTERVALS ? MONTH : intervals.get(intervals.size() / 2));
  }

  /**
   * The most that may have been run besides the total since the reading before it; nothing where
   * there is no gap, or where the total is more than its last interval can hold.
   */
  RunningHours uncovered(Reading total, Instant since) {
    Duration gap = Duration.between(since, total.at());
    Instant lastBegan = total.at().minus(usual);
    boolean isInDoubt =
        gap.compareTo(HourSpan.LONGEST_PLAIN) > 0
            && gap.multipliedBy(2).compareTo(usual.multipliedBy(3)) > 0
            && Counter.isPossible(total.hours(), lastBegan, total.at());
    return isInDoubt ? RunningHours.elapsedBetween(since, lastBegan) : RunningHours.ZERO;
  }
}
