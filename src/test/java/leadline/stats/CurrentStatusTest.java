package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CurrentStatusTest {

  /**
   * Source: Nelson 1982, Applied Life Data Analysis, p. 409: cracked turbine wheels, 432 opened.
   */
  @Test
  void turbineWheels() {
    double[][] counts = {
      {4, 0, 39},
      {10, 4, 49},
      {14, 2, 31},
      {18, 7, 66},
      {22, 5, 25},
      {26, 9, 30},
      {30, 9, 33},
      {34, 6, 7},
      {38, 22, 12},
      {42, 21, 19},
      {46, 21, 15}
    };
    List<ObservedInterval> wheels = new ArrayList<>();
    for (double[] count : counts) {
      if (count[1] > 0) {
        wheels.add(ObservedInterval.within(0, count[0]).times(count[1]));
      }
      wheels.add(ObservedInterval.beyond(count[0]).times(count[2]));
    }
    List<CurrentStatus.Point> points = CurrentStatus.points(wheels);
    assertEquals(432, points.stream().mapToDouble(CurrentStatus.Point::inspected).sum());
    assertArrayEquals(
        new double[] {0, .0698, .0698, .0959, .1667, .2222, .2222, .4615, .5811, .5811, .5833},
        points.stream().mapToDouble(CurrentStatus.Point::failedBy).toArray(),
        5e-5);
  }

  @Test
  void whatWasInspectedTwiceHasNoPlace() {
    assertThrows(
        IllegalArgumentException.class,
        () -> CurrentStatus.points(List.of(ObservedInterval.within(2, 4))));
    assertThrows(
        IllegalArgumentException.class,
        () -> CurrentStatus.points(List.of(ObservedInterval.at(4))));
    assertEquals(List.of(), CurrentStatus.points(List.of()));
  }

  /** Source: ages have no unit, rows no order, and a weight counts rows alike. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void neitherUnitNorOrderNorSplitWeightsMatter(long seed) {
    Random random = new Random(seed);
    List<ObservedInterval> lives = RandomIntervals.currentStatus(random);
    List<ObservedInterval> altered = new ArrayList<>();
    for (ObservedInterval life : lives) {
      altered.add(new ObservedInterval(8 * life.lower(), 8 * life.upper(), 1));
      altered.add(new ObservedInterval(8 * life.lower(), 8 * life.upper(), 2));
    }
    Collections.shuffle(altered, random);
    List<CurrentStatus.Point> one =
        CurrentStatus.points(lives.stream().map(life -> life.times(3)).toList());
    List<CurrentStatus.Point> other = CurrentStatus.points(altered);
    assertEquals(one.size(), other.size());
    for (int index = 0; index < one.size(); index++) {
      assertEquals(8 * one.get(index).age(), other.get(index).age());
      assertEquals(one.get(index).inspected(), other.get(index).inspected());
      assertEquals(one.get(index).failedBy(), other.get(index).failedBy(), 1e-12);
    }
  }
}
