package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import leadline.stats.MeanCumulativeFunction.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeanCumulativeFunctionTest {

  /** Source: the definition: all observed throughout, it is the mean count, and its error known. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void observedThroughoutItIsTheMeanOfCounts(long seed) {
    Random random = new Random(seed);
    List<EventHistory> units = new ArrayList<>();
    for (int unit = 0; unit < 12; unit++) {
      units.add(RandomHistories.unit(random, 0, 500));
    }
    double mean = units.stream().mapToInt(unit -> unit.events().size()).average().orElseThrow();
    double squares =
        units.stream().mapToDouble(unit -> Math.pow(unit.events().size() - mean, 2)).sum();
    List<Point> points = MeanCumulativeFunction.of(units).points();
    Point last = points.get(points.size() - 1);
    assertEquals(mean, last.mean(), 1e-12);
    assertEquals(Math.sqrt(squares) / 12, last.standardError().orElseThrow(), 1e-12);
    List<Double> nelson = NelsonVariance.standardErrors(units).orElseThrow();
    assertEquals(Math.sqrt(squares / 11 / 12), nelson.get(nelson.size() - 1), 1e-10);
  }

  /** Source: the first failures of units watched until then: the mean is the cumulative hazard. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void oneEventThatEndsAUnitIsNelsonAalen(long seed) {
    List<EventHistory> units = new ArrayList<>();
    SurvivalTally<RandomTimes.Cause> tally = new SurvivalTally<>();
    for (var time : RandomTimes.someWithDelayedEntry(new Random(seed))) {
      if (time.time() > 0) {
        boolean ended = time instanceof ObservedTime.Ended<RandomTimes.Cause>;
        units.add(
            new EventHistory(
                time.entry().orElse(0), time.time(), ended ? List.of(time.time()) : List.of()));
        tally.add(time, 1);
      }
    }
    List<Point> points = MeanCumulativeFunction.of(units).points();
    List<NelsonAalen.Point> hazard = NelsonAalen.of(tally).points();
    assertEquals(hazard.size(), points.size());
    for (int index = 0; index < points.size(); index++) {
      assertEquals(hazard.get(index).cumulativeHazard(), points.get(index).mean(), 1e-12);
      assertEquals(
          Math.sqrt(hazard.get(index).variance()), points.get(index).poissonStandardError(), 1e-12);
    }
  }

  /** Source: time has no unit, and units have no order. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void neitherUnitNorOrderMatters(long seed) {
    Random random = new Random(seed);
    List<EventHistory> units = RandomHistories.units(random, 9);
    List<EventHistory> altered = new ArrayList<>();
    units.forEach(unit -> altered.add(RandomHistories.scaled(unit, 8)));
    Collections.shuffle(altered, random);
    List<Point> one = MeanCumulativeFunction.of(units).points();
    List<Point> other = MeanCumulativeFunction.of(altered).points();
    for (int index = 0; index < one.size(); index++) {
      assertEquals(one.get(index).time() * 8, other.get(index).time());
      assertEquals(one.get(index).mean(), other.get(index).mean(), 1e-12);
      assertEquals(
          one.get(index).standardError().orElseThrow(),
          other.get(index).standardError().orElseThrow(),
          1e-12);
    }
  }

  /** Source: the definition of limits. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void limitsContainTheMeanAndWidenWithConfidence(long seed) {
    List<EventHistory> units = RandomHistories.units(new Random(seed), 6);
    for (Point point : MeanCumulativeFunction.of(units).points()) {
      Limits narrow = point.limits(Confidence.of(0.8)).orElseThrow();
      Limits wide = point.limits(Confidence.of(0.95)).orElseThrow();
      assertTrue(narrow.lower() <= point.mean() && point.mean() <= narrow.upper());
      assertTrue(wide.lower() <= narrow.lower() && narrow.upper() <= wide.upper());
    }
  }

  @Test
  void oneUnitTellsNothingOfTheSpread() {
    List<EventHistory> one = List.of(new EventHistory(0, 10, List.of(4.0)));
    Point point = MeanCumulativeFunction.of(one).points().get(0);
    assertEquals(OptionalDouble.empty(), point.standardError());
    assertEquals(Optional.empty(), point.limits(Confidence.of(0.95)));
    assertEquals(Optional.empty(), NelsonVariance.standardErrors(one));
    assertEquals(List.of(), MeanCumulativeFunction.of(List.of()).points());
  }

  @Test
  void eventsOutsideTheTimeObservedAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new EventHistory(2, 10, List.of(2.0)));
    assertThrows(IllegalArgumentException.class, () -> new EventHistory(2, 10, List.of(11.0)));
    assertThrows(IllegalArgumentException.class, () -> new EventHistory(5, 5, List.of()));
  }
}
