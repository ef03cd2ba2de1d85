package leadline.stats;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * The pairs of times between events of a unit of which the later is longer, over all units: many
 * when events thin out (improvement), few when they crowd (deterioration). It supposes no more of
 * the times than that their order is chance if there is no trend. Source: NIST/SEMATECH e-Handbook
 * of Statistical Methods 8.2.3.4; Kendall 1938, Biometrika 30:81.
 */
public final class ReverseArrangements {

  /** Up to so many pairs the distribution is counted out, beyond it is normal to three digits. */
  private static final int COUNTED_PAIRS = 2000;

  /** Of a unit's end: differences of decimal times that are equal differ by less. */
  private static final double RESOLUTION = 1e-12;

  private final long count;
  private final double countWithTies;
  private final long pairs;
  private final double variance;
  private final boolean tied;
  private final List<Integer> lengths;

  private ReverseArrangements(List<double[]> sequences) {
    count = sequences.stream().mapToLong(ReverseArrangements::reversals).sum();
    pairs = sequences.stream().mapToLong(one -> (long) one.length * (one.length - 1) / 2).sum();
    variance = sequences.stream().mapToDouble(ReverseArrangements::variance).sum();
    long ties = sequences.stream().mapToLong(ReverseArrangements::ties).sum();
    countWithTies = count + ties / 2.0;
    tied = ties > 0;
    lengths = sequences.stream().map(one -> one.length).toList();
  }

  /** Of times between events from the start of observation on; a last event's is complete too. */
  static ReverseArrangements of(Collection<EventHistory> units) {
    return new ReverseArrangements(units.stream().map(ReverseArrangements::gaps).toList());
  }

  /** The pairs of which the later is longer. */
  public long count() {
    return count;
  }

  /** What the count is on average without a trend: half of all pairs. */
  public double expected() {
    return pairs / 2.0;
  }

  /**
   * The chance of as many or more without a trend, small when there is improvement; empty when no
   * pair differs. Exact up to 2,000 pairs none of which are equal, else normal with a correction
   * for continuity and ties, a pair of equal times counting half.
   */
  public Optional<Double> pAsMany() {
    if (!(variance > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        isCounted()
            ? chanceOfAtLeast(count)
            : normal(countWithTies - 0.5 - expected()).upperTail());
  }

  /** The chance of as few or fewer without a trend, small when there is deterioration. */
  public Optional<Double> pAsFew() {
    if (!(variance > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        isCounted()
            ? chanceOfAtLeast(pairs - count)
            : normal(countWithTies + 0.5 - expected()).lowerTail());
  }

  /** Twice the smaller of the two chances, at most 1; empty when no pair differs. */
  public Optional<Double> pTwoSided() {
    return pAsMany().flatMap(many -> pAsFew().map(few -> Math.min(1, 2 * Math.min(many, few))));
  }

  private boolean isCounted() {
    return !tied && pairs <= COUNTED_PAIRS;
  }

  private NormalStatistic normal(double difference) {
    return new NormalStatistic(difference / Math.sqrt(variance));
  }

  /** The count is a sum of independent ranks, each of 0 to the number of earlier times. */
  private double chanceOfAtLeast(long least) {
    double[] chances = {1};
    for (int length : lengths) {
      for (int earlier = 1; earlier < length; earlier++) {
        double[] next = new double[chances.length + earlier];
        double window = 0;
        for (int sum = 0; sum < next.length; sum++) {
          window += sum < chances.length ? chances[sum] : 0;
          window -= sum > earlier ? chances[sum - earlier - 1] : 0;
          next[sum] = Math.max(0, window) / (earlier + 1);
        }
        chances = next;
      }
    }
    double chance = 0;
    for (int sum = chances.length - 1; sum >= least; sum--) {
      chance += chances[sum];
    }
    return Math.min(1, chance);
  }

  /** In multiples so small that only the rounding of a difference is lost. */
  private static double[] gaps(EventHistory unit) {
    List<Double> gaps = new ArrayList<>();
    double resolution = unit.end() * RESOLUTION;
    double before = unit.start();
    for (double event : unit.events()) {
      gaps.add(Math.rint((event - before) / resolution));
      before = event;
    }
    return gaps.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static long reversals(double[] gaps) {
    return countPairs(gaps, (earlier, later) -> later > earlier);
  }

  private static long ties(double[] gaps) {
    return countPairs(gaps, (earlier, later) -> later == earlier);
  }

  private interface PairTest {
    boolean test(double earlier, double later);
  }

  private static long countPairs(double[] gaps, PairTest test) {
    long count = 0;
    for (int later = 1; later < gaps.length; later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        count += test.test(gaps[earlier], gaps[later]) ? 1 : 0;
      }
    }
    return count;
  }

  /** Source: Kendall 1970, Rank Correlation Methods, formula 4.3 with ties in one ranking. */
  private static double variance(double[] gaps) {
    double ties =
        DoubleStream.of(gaps)
            .boxed()
            .collect(Collectors.groupingBy(gap -> gap, Collectors.counting()))
            .values()
            .stream()
            .mapToDouble(ReverseArrangements::varianceOfOrders)
            .sum();
    return (varianceOfOrders(gaps.length) - ties) / 72;
  }

  /** Of random orders of so many, 72-fold. */
  private static double varianceOfOrders(double number) {
    return number * (number - 1) * (2 * number + 5);
  }
}
