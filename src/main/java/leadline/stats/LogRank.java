package leadline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The log-rank test: whether groups of durations end at the same rate at every age, compared among
 * those at risk at the same time, within strata if there are several. Exact ends, right-censoring
 * and delayed entry; any cause alike. Source: Mantel 1966, Cancer Chemotherapy Reports 50:163; Peto
 * and Peto 1972, J. R. Stat. Soc. A 135:185; for groups and strata Kalbfleisch and Prentice 2002,
 * The Statistical Analysis of Failure Time Data, section 1.5.
 *
 * @param <G> the groups
 */
public final class LogRank<G extends Comparable<? super G>> {

  /**
   * Ends of a group.
   *
   * @param observed how many were seen
   * @param expected how many there would be if all at risk were alike, 0 or more
   */
  public record Ends(long observed, double expected) {

    private Ends plus(long more, double moreExpected) {
      return new Ends(observed + more, expected + moreExpected);
    }
  }

  private final List<G> groups;
  private final NavigableMap<G, Ends> ends = new TreeMap<>();
  private final double[][] covariance;

  private LogRank(List<G> groups) {
    this.groups = groups;
    this.covariance = new double[groups.size()][groups.size()];
    groups.forEach(group -> ends.put(group, new Ends(0, 0)));
  }

  /** Of these groups; an empty tally is a group of which nothing is known. */
  public static <G extends Comparable<? super G>> LogRank<G> of(
      Map<G, ? extends SurvivalTally<?>> groups) {
    return stratified(List.of(groups));
  }

  /** Of groups each of which may be found in any of several strata, compared within strata. */
  public static <G extends Comparable<? super G>> LogRank<G> stratified(
      List<? extends Map<G, ? extends SurvivalTally<?>>> strata) {
    NavigableSet<G> groups = new TreeSet<>();
    strata.forEach(stratum -> groups.addAll(stratum.keySet()));
    LogRank<G> test = new LogRank<>(List.copyOf(groups));
    strata.forEach(test::add);
    return test;
  }

  private void add(Map<G, ? extends SurvivalTally<?>> stratum) {
    double[] times =
        stratum.values().stream()
            .map(SurvivalTally::endTimes)
            .reduce(new double[0], SurvivalTally::merged);
    Map<G, List<RiskSet>> riskSets = new TreeMap<>();
    stratum.forEach((group, tally) -> riskSets.put(group, tally.riskSetsAt(times)));
    for (int time = 0; time < times.length; time++) {
      long[] atRisk = new long[groups.size()];
      long[] ended = new long[groups.size()];
      for (int group = 0; group < groups.size(); group++) {
        List<RiskSet> sets = riskSets.getOrDefault(groups.get(group), List.of());
        if (!sets.isEmpty()) {
          atRisk[group] = sets.get(time).atRisk();
          ended[group] = sets.get(time).events();
        }
      }
      add(atRisk, ended);
    }
  }

  private void add(long[] atRisk, long[] ended) {
    double all = Arrays.stream(atRisk).sum();
    double allEnded = Arrays.stream(ended).sum();
    double variance = all > 1 ? allEnded * (all - allEnded) / (all - 1) : 0;
    for (int group = 0; group < atRisk.length; group++) {
      double share = atRisk[group] / all;
      Ends before = ends.getOrDefault(groups.get(group), new Ends(0, 0));
      ends.put(groups.get(group), before.plus(ended[group], allEnded * share));
      for (int other = 0; other < atRisk.length; other++) {
        double alike = group == other ? share : 0;
        covariance[group][other] += variance * (alike - share * (atRisk[other] / all));
      }
    }
  }

  /** What each group's ends were, in the order of the groups. */
  public NavigableMap<G, Ends> ends() {
    return Collections.unmodifiableNavigableMap(ends);
  }

  /**
   * Large when the groups differ, with a degree of freedom less than there are groups. A group that
   * was never at risk beside another, when some but not all of them ended, is left out; groups
   * linked by no such time are compared apart, each set at the cost of a degree. Empty when no two
   * groups can be compared.
   */
  public Optional<ChiSquared> test() {
    List<Integer> compared = comparedButOneOfEachLinkedSet();
    if (compared.isEmpty()) {
      return Optional.empty();
    }
    int[] rows = compared.stream().mapToInt(Integer::intValue).toArray();
    RealMatrix matrix = MatrixUtils.createRealMatrix(covariance).getSubMatrix(rows, rows);
    double[] excess = new double[rows.length];
    for (int index = 0; index < rows.length; index++) {
      Ends end = ends.getOrDefault(groups.get(rows[index]), new Ends(0, 0));
      excess[index] = end.observed() - end.expected();
    }
    var difference = MatrixUtils.createRealVector(excess);
    double statistic =
        difference.dotProduct(new LUDecomposition(matrix).getSolver().solve(difference));
    return Optional.of(new ChiSquared(Math.max(0, statistic), rows.length));
  }

  private List<Integer> comparedButOneOfEachLinkedSet() {
    List<Integer> compared = new ArrayList<>();
    boolean[] reached = new boolean[groups.size()];
    for (int group = 0; group < groups.size(); group++) {
      if (!reached[group]) {
        reached[group] = true;
        reachFrom(group, reached, compared);
      }
    }
    return compared;
  }

  private void reachFrom(int group, boolean[] reached, List<Integer> compared) {
    for (int other = 0; other < groups.size(); other++) {
      if (!reached[other] && covariance[group][other] < 0) {
        reached[other] = true;
        compared.add(other);
        reachFrom(other, reached, compared);
      }
    }
  }
}
