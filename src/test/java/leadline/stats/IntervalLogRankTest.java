package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IntervalLogRankTest {

  /**
   * Source: Fay and Shaw 2010, J. Stat. Software 36(2), section 5 (from memory): score -9.141846, Z
   * -2.6684, p 0.007622.
   */
  @Test
  void breastRetractionAfterTwoTreatments() {
    IntervalLogRank<String> test =
        IntervalLogRank.of(
            Map.of(
                "radiotherapy", BreastRetraction.afterRadiotherapy(),
                "both", BreastRetraction.afterRadiotherapyAndChemotherapy()));
    assertEquals(-9.141846, test.excess().lastEntry().getValue(), 5e-7);
    assertEquals(9.141846, test.excess().firstEntry().getValue(), 5e-7);
    ChiSquared found = test.test().orElseThrow();
    assertEquals(2.6684, Math.sqrt(found.statistic()), 5e-5);
    assertEquals(0.007622, found.upperTail(), 5e-7);
    assertEquals(1, found.degreesOfFreedom());
    assertEquals(found.upperTail(), test.pByDealing(20_000, 1), 2e-3);
    assertEquals(test.pByDealing(500, 7), test.pByDealing(500, 7));
  }

  /** Source: Fay and Shaw 2010: of seen ends and right-censoring, observed less expected ends. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void withoutInspectionsScoresAreThoseOfTheLogRankTest(long seed) {
    Random random = new Random(seed);
    var a = RandomTimes.watchedFromStart(random);
    var b = RandomTimes.watchedFromStart(random);
    LogRank<String> known =
        LogRank.of(Map.of("a", RandomTimes.tally(a), "b", RandomTimes.tally(b)));
    IntervalLogRank<String> test =
        IntervalLogRank.of(Map.of("a", RandomIntervals.of(a), "b", RandomIntervals.of(b)));
    known
        .ends()
        .forEach(
            (group, ends) ->
                assertEquals(
                    ends.observed() - ends.expected(),
                    test.excess().getOrDefault(group, Double.POSITIVE_INFINITY),
                    1e-9));
  }

  /** Source: rows have no order, and a weight counts rows alike. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void neitherOrderNorSplitWeightsMatter(long seed) {
    Random random = new Random(seed);
    List<ObservedInterval> a = RandomIntervals.mixed(random);
    List<ObservedInterval> b = RandomIntervals.mixed(random);
    List<ObservedInterval> doubled = new ArrayList<>(a);
    doubled.addAll(a);
    Collections.shuffle(doubled, random);
    var one =
        IntervalLogRank.of(Map.of("a", a.stream().map(each -> each.times(2)).toList(), "b", b));
    var other = IntervalLogRank.of(Map.of("a", doubled, "b", b));
    assertEquals(
        one.test().orElseThrow().statistic(), other.test().orElseThrow().statistic(), 1e-7);
    assertEquals(one.pByDealing(200, 5), other.pByDealing(200, 5), 1e-12);
  }

  @Test
  void whatCannotBeComparedHasNoTest() {
    List<ObservedInterval> some = List.of(ObservedInterval.within(1, 3), ObservedInterval.at(5));
    List<ObservedInterval> goingOn =
        List.of(ObservedInterval.beyond(3), ObservedInterval.beyond(3));
    assertEquals(Optional.empty(), IntervalLogRank.of(Map.of("a", some)).test());
    assertEquals(Optional.empty(), IntervalLogRank.of(Map.of("a", some, "b", List.of())).test());
    assertEquals(Optional.empty(), IntervalLogRank.of(Map.of("a", goingOn, "b", goingOn)).test());
    var halves = IntervalLogRank.of(Map.of("a", List.of(some.get(0).times(0.5)), "b", some));
    assertThrows(IllegalArgumentException.class, () -> halves.pByDealing(10, 1));
    assertThrows(IllegalArgumentException.class, () -> halves.pByDealing(0, 1));
  }

  /** Source: time has no unit, and a seen end is an interval of no width. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void neitherTheUnitNorANarrowIntervalMatters(long seed) {
    Random random = new Random(seed);
    List<ObservedInterval> a = RandomIntervals.mixed(random);
    List<ObservedInterval> b = RandomIntervals.mixed(random);
    double statistic = statistic(a, b);
    assertEquals(
        statistic, statistic(altered(a, 16, 0), altered(b, 16, 0)), 1e-9 * (1 + statistic));
    assertEquals(
        statistic, statistic(altered(a, 1, 1e-9), altered(b, 1, 1e-9)), 1e-6 * (1 + statistic));
  }

  private static List<ObservedInterval> altered(
      List<ObservedInterval> all, double factor, double width) {
    return all.stream()
        .map(
            one ->
                new ObservedInterval(
                    factor * one.lower() - (one.isExact() ? width : 0),
                    factor * one.upper(),
                    one.weight()))
        .toList();
  }

  private static double statistic(List<ObservedInterval> a, List<ObservedInterval> b) {
    return IntervalLogRank.of(Map.of("a", a, "b", b)).test().orElseThrow().statistic();
  }
}
