package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

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
}
