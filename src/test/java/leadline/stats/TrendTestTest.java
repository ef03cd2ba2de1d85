package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrendTestTest {

  /** Source: NIST/SEMATECH e-Handbook 8.2.3.4, ten repairs in 1,500 hours. */
  static final EventHistory REPAIRS =
      new EventHistory(
          0, 1500, List.of(5.0, 40.0, 43.0, 175.0, 389.0, 712.0, 747.0, 795.0, 1299.0, 1478.0));

  /** Source: NIST/SEMATECH e-Handbook 8.2.3.4; Laplace's value by its formula. */
  @Test
  void publishedTestsOfTenRepairs() {
    TrendTest test = new TrendTest(List.of(REPAIRS), Truncation.TIME);
    assertEquals(33, test.reverseArrangements().count());
    assertEquals(22.5, test.reverseArrangements().expected());
    ChiSquared military = test.militaryHandbook().orElseThrow();
    assertEquals(37.23, military.statistic(), 5e-3);
    assertEquals(20, military.degreesOfFreedom());
    assertEquals(.011, military.upperTail(), 5e-4);
    assertEquals(.022, military.twoSided(), 5e-4);
    assertEquals(-1.33, test.laplace().orElseThrow().statistic(), 5e-3);
  }

  /** Source: counted out: of all orders of six times, so many have as many reverse arrangements. */
  @Test
  void reverseArrangementsAreCountedOut() {
    List<EventHistory> orders = new ArrayList<>();
    permute(new ArrayList<>(), List.of(1, 2, 4, 8, 16, 32), orders);
    assertEquals(720, orders.size());
    EventHistory one = orders.get(517);
    double seen = reversals(one).count();
    double asMany = orders.stream().filter(order -> reversals(order).count() >= seen).count();
    double asFew = orders.stream().filter(order -> reversals(order).count() <= seen).count();
    assertEquals(asMany / 720, reversals(one).pAsMany().orElseThrow(), 1e-12);
    assertEquals(asFew / 720, reversals(one).pAsFew().orElseThrow(), 1e-12);
    double spread =
        orders.stream().mapToDouble(order -> Math.pow(reversals(order).count() - 7.5, 2)).sum();
    assertEquals((2 * 6 + 5) * 6 * 5 / 72.0, spread / 720, 1e-9);
  }

  /** Source: Kendall 1970, Rank Correlation Methods: the normal approximation joins the exact. */
  @ParameterizedTest
  @ValueSource(ints = {63, 70})
  void chancesOfManyAreNearlyNormal(int events) {
    ReverseArrangements found = reversals(history(new Random(4).doubles(events).toArray(), events));
    double spread = Math.sqrt(events * (events - 1) * (2 * events + 5) / 72.0);
    double z = (found.count() - 0.5 - found.expected()) / spread;
    assertEquals(new NormalStatistic(z).upperTail(), found.pAsMany().orElseThrow(), 1e-3);
  }

  /** Source: NIST/SEMATECH e-Handbook 8.2.3.4: a reversal is a longer time, not one as long. */
  @Test
  void equalTimesAreNoReversal() {
    ReverseArrangements found = reversals(history(new double[] {0.1, 0.1, 0.1, 0.3}, 4));
    assertEquals(3, found.count());
    assertTrue(found.pAsMany().orElseThrow() < 0.5);
    ReverseArrangements alike = reversals(history(new double[] {0.1, 0.1, 0.1, 0.1}, 4));
    assertEquals(Optional.empty(), alike.pTwoSided());
  }

  /** Source: time has no unit; Laplace's test knows no clock but that of the observation. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void neitherUnitNorClockMatters(long seed) {
    List<EventHistory> units = RandomHistories.units(new Random(seed), 4);
    TrendTest test = new TrendTest(units, Truncation.TIME);
    TrendTest scaled =
        new TrendTest(
            units.stream().map(unit -> RandomHistories.scaled(unit, 4)).toList(), Truncation.TIME);
    TrendTest shifted =
        new TrendTest(units.stream().map(TrendTestTest::shifted).toList(), Truncation.TIME);
    double u = test.laplace().orElseThrow().statistic();
    assertEquals(u, scaled.laplace().orElseThrow().statistic(), 1e-12);
    assertEquals(u, shifted.laplace().orElseThrow().statistic(), 1e-9);
    assertEquals(
        test.militaryHandbook().orElseThrow().statistic(),
        scaled.militaryHandbook().orElseThrow().statistic(),
        1e-9);
    assertEquals(Optional.empty(), shifted.militaryHandbook());
    assertEquals(test.reverseArrangements().pTwoSided(), scaled.reverseArrangements().pTwoSided());
  }

  /** Source: MIL-HDBK-189 1981: an event that ended observation is left out. */
  @Test
  void anEventThatEndedObservationTellsOfNoTrend() {
    EventHistory ended = new EventHistory(0, 100, List.of(10.0, 30.0, 100.0));
    EventHistory before = new EventHistory(0, 100, List.of(10.0, 30.0));
    TrendTest failure = new TrendTest(List.of(ended, before), Truncation.FAILURE);
    TrendTest without = new TrendTest(List.of(before, before), Truncation.TIME);
    assertEquals(4, failure.events());
    assertEquals(without.laplace(), failure.laplace());
    assertEquals(without.militaryHandbook(), failure.militaryHandbook());
    assertEquals(5, new TrendTest(List.of(ended, before), Truncation.TIME).events());
  }

  @Test
  void withoutEventsThereIsNoTest() {
    TrendTest none = new TrendTest(List.of(new EventHistory(0, 100, List.of())), Truncation.TIME);
    assertEquals(Optional.empty(), none.laplace());
    assertEquals(Optional.empty(), none.militaryHandbook());
    assertEquals(Optional.empty(), none.reverseArrangements().pAsMany());
    assertThrows(IllegalArgumentException.class, () -> new TrendTest(List.of(), Truncation.TIME));
  }

  private static EventHistory shifted(EventHistory unit) {
    return new EventHistory(
        unit.start() + 512,
        unit.end() + 512,
        unit.events().stream().map(event -> event + 512).toList());
  }

  private static ReverseArrangements reversals(EventHistory unit) {
    return new TrendTest(List.of(unit), Truncation.TIME).reverseArrangements();
  }

  private static EventHistory history(double[] gaps, int count) {
    List<Double> events = new ArrayList<>();
    double time = 0;
    for (int index = 0; index < count; index++) {
      time += gaps[index];
      events.add(time);
    }
    return new EventHistory(0, time + 1, events);
  }

  private static void permute(List<Integer> chosen, List<Integer> left, List<EventHistory> orders) {
    if (left.isEmpty()) {
      orders.add(history(chosen.stream().mapToDouble(Integer::doubleValue).toArray(), 6));
    }
    for (Integer next : left) {
      List<Integer> more = new ArrayList<>(chosen);
      more.add(next);
      permute(more, left.stream().filter(other -> !other.equals(next)).toList(), orders);
    }
  }

  /** Source: units have no order. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void orderOfUnitsDoesNotMatter(long seed) {
    Random random = new Random(seed);
    List<EventHistory> units = RandomHistories.units(random, 5);
    List<EventHistory> shuffled = new ArrayList<>(units);
    Collections.shuffle(shuffled, random);
    TrendTest one = new TrendTest(units, Truncation.TIME);
    TrendTest other = new TrendTest(shuffled, Truncation.TIME);
    assertEquals(
        one.laplace().orElseThrow().statistic(), other.laplace().orElseThrow().statistic(), 1e-12);
    assertEquals(
        one.militaryHandbook().orElseThrow().statistic(),
        other.militaryHandbook().orElseThrow().statistic(),
        1e-9);
    assertEquals(one.reverseArrangements().count(), other.reverseArrangements().count());
  }
}
