package leadline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.DoubleStream;

/**
 * The log-rank test for durations that inspections confine to intervals. Each duration has a score
 * from the pooled nonparametric estimate, which for a seen end or right-censoring is what it adds
 * to observed less expected ends; the groups' sums of scores are judged by how they vary when
 * durations are dealt to the groups at random. That needs groups that were inspected alike: a
 * difference in inspection may look like a difference in durations. Source: Sun 1996, Stat. Med.
 * 15:1387, scores; Fay and Shaw 2010, J. Stat. Software 36(2), permutation form.
 *
 * @param <G> the groups
 */
public final class IntervalLogRank<G extends Comparable<? super G>> {

  /** Beyond it, sums of the same scores in another order are taken as equal. */
  private static final double ROUNDING = 1e-9;

  private record Scored(double score, double weight) {}

  private final NavigableMap<G, List<Scored>> scores = new TreeMap<>();

  private IntervalLogRank() {}

  /**
   * Of these groups.
   *
   * @throws IllegalArgumentException if there is no duration at all
   */
  public static <G extends Comparable<? super G>> IntervalLogRank<G> of(
      Map<G, List<ObservedInterval>> groups) {
    Turnbull pooled = Turnbull.of(groups.values().stream().flatMap(List::stream).toList());
    LogRankScores scores = new LogRankScores(pooled);
    IntervalLogRank<G> test = new IntervalLogRank<>();
    groups.forEach(
        (group, durations) ->
            test.scores.put(
                group,
                durations.stream()
                    .map(duration -> new Scored(scores.of(duration), duration.weight()))
                    .toList()));
    return test;
  }

  /**
   * The sum of scores of each group: ends more than expected if all were alike, negative where
   * fewer.
   */
  public NavigableMap<G, Double> excess() {
    NavigableMap<G, Double> sums = new TreeMap<>();
    scores.forEach((group, scored) -> sums.put(group, sum(scored)));
    return Collections.unmodifiableNavigableMap(sums);
  }

  /**
   * Large when the groups differ; approximate, for groups that are not small. Empty when fewer than
   * two groups hold a duration, or all scores are equal, or all weights together are 1 or less.
   */
  public Optional<ChiSquared> test() {
    List<List<Scored>> groups = scores.values().stream().filter(one -> !one.isEmpty()).toList();
    double total = groups.stream().mapToDouble(IntervalLogRank::weight).sum();
    double squares =
        groups.stream()
            .flatMap(List::stream)
            .mapToDouble(one -> one.weight * one.score * one.score)
            .sum();
    if (groups.size() < 2 || !(total > 1) || !(squares > ROUNDING * ROUNDING * total)) {
      return Optional.empty();
    }
    double sum = groups.stream().mapToDouble(one -> sum(one) * sum(one) / weight(one)).sum();
    return Optional.of(new ChiSquared(sum / (squares / (total - 1)), groups.size() - 1));
  }

  /**
   * The chance of a statistic as large by dealing the durations to the groups at random, for groups
   * of any size: so many of the dealings, counting the one seen, as are no less extreme; 1 where
   * there is nothing to compare.
   *
   * @param dealings how many to make, 1 or more
   * @param start of the sequence of random numbers; the same start gives the same chance
   * @throws IllegalArgumentException if a weight is no whole number, or there is no dealing
   */
  public double pByDealing(int dealings, long start) {
    if (dealings < 1) {
      throw new IllegalArgumentException("no dealing: " + dealings);
    }
    List<Integer> sizes = new ArrayList<>();
    double[] all = new double[0];
    for (List<Scored> group : scores.values()) {
      double[] each = group.stream().flatMapToDouble(IntervalLogRank::repeated).sorted().toArray();
      int from = all.length;
      all = Arrays.copyOf(all, from + each.length);
      System.arraycopy(each, 0, all, from, each.length);
      sizes.add(each.length);
    }
    double seen = spread(all, sizes) * (1 - ROUNDING);
    SplittableRandom random = new SplittableRandom(start);
    int asExtreme = 1;
    for (int dealing = 0; dealing < dealings; dealing++) {
      shuffle(all, random);
      asExtreme += spread(all, sizes) >= seen ? 1 : 0;
    }
    return (double) asExtreme / (dealings + 1);
  }

  private static DoubleStream repeated(Scored scored) {
    if (scored.weight != Math.rint(scored.weight) || scored.weight > Integer.MAX_VALUE) {
      throw new IllegalArgumentException("no whole number of durations: " + scored.weight);
    }
    return DoubleStream.generate(scored::score).limit((long) scored.weight);
  }

  private static double spread(double[] dealt, List<Integer> sizes) {
    double spread = 0;
    int from = 0;
    for (int size : sizes) {
      double sum = 0;
      for (int index = from; index < from + size; index++) {
        sum += dealt[index];
      }
      spread += size == 0 ? 0 : sum * sum / size;
      from += size;
    }
    return spread;
  }

  private static void shuffle(double[] values, SplittableRandom random) {
    for (int index = values.length - 1; index > 0; index--) {
      int other = random.nextInt(index + 1);
      double value = values[index];
      values[index] = values[other];
      values[other] = value;
    }
  }

  private static double sum(List<Scored> group) {
    return group.stream().mapToDouble(one -> one.weight * one.score).sum();
  }

  private static double weight(List<Scored> group) {
    return group.stream().mapToDouble(Scored::weight).sum();
  }
}
