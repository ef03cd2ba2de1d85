package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LifeTableTest {

  /** Source: Meeker and Escobar 1998, table 3.2, heat-exchanger tubes (from memory). */
  @Test
  void heatExchangerTubes() {
    List<LifeTable.Point> points =
        LifeTable.points(
                List.of(
                    ObservedInterval.within(0, 1).times(4),
                    ObservedInterval.within(1, 2).times(5),
                    ObservedInterval.within(2, 3).times(2),
                    ObservedInterval.beyond(3).times(95),
                    ObservedInterval.beyond(2).times(95),
                    ObservedInterval.beyond(1).times(99)))
            .orElseThrow();
    assertEquals(3, points.size());
    assertEquals(.0133, points.get(0).endedBy(), 5e-5);
    assertEquals(.0384, points.get(1).endedBy(), 5e-5);
    assertEquals(.0582, points.get(2).endedBy(), 5e-5);
  }

  /** Source: Meeker and Escobar 1998, section 3.3: it is the maximum-likelihood estimate. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void atCommonInspectionsItIsTheMaximum(long seed) {
    Random random = new Random(seed);
    List<ObservedInterval> durations = new ArrayList<>();
    for (int index = 0; index < 30; index++) {
      double age = 500.0 * random.nextInt(12);
      durations.add(
          random.nextInt(3) == 0
              ? ObservedInterval.beyond(age)
              : ObservedInterval.within(age, age + 500));
    }
    Turnbull estimate = Turnbull.of(durations);
    for (LifeTable.Point point : LifeTable.points(durations).orElseThrow()) {
      assertEquals(1 - point.endedBy(), estimate.survivalAt(point.time()).upper(), 1e-10);
    }
  }

  @Test
  void elsewhereThereIsNone() {
    assertEquals(Optional.empty(), LifeTable.points(List.of(ObservedInterval.beyond(3))));
    assertEquals(Optional.empty(), LifeTable.points(List.of(ObservedInterval.at(3))));
    assertEquals(
        Optional.empty(),
        LifeTable.points(List.of(ObservedInterval.within(0, 4), ObservedInterval.within(2, 6))));
    assertEquals(
        Optional.empty(),
        LifeTable.points(List.of(ObservedInterval.within(0, 4), ObservedInterval.within(2, 4))));
    assertEquals(
        Optional.empty(),
        LifeTable.points(List.of(ObservedInterval.within(0, 4), ObservedInterval.beyond(2))));
  }
}
