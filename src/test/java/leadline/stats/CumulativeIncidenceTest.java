package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import leadline.stats.RandomTimes.Cause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CumulativeIncidenceTest {

  /**
   * Source: by hand from Aalen and Johansen 1978. Of six at risk one ends at 7,600 (1/6), of five
   * one at 8,200 (5/6 x 1/5), of four one at 9,100 (4/6 x 1/4), of two one at 10,400 (1/2 x 1/2).
   */
  @Test
  void sharesEndedByEachReasonByTheInterval() {
    SurvivalTally<Cause> tally =
        RandomTimes.tally(
            List.of(
                ObservedTime.ended(7600, Cause.PLANNED),
                ObservedTime.ended(8200, Cause.BREAKDOWN),
                ObservedTime.ended(9100, Cause.PLANNED),
                ObservedTime.ended(10_400, Cause.CONDITION),
                ObservedTime.censored(12_300),
                ObservedTime.censored(9800),
                ObservedTime.censored(6000),
                ObservedTime.censored(2500)));
    CumulativeIncidence<Cause> incidence = CumulativeIncidence.of(tally);
    var byInterval = incidence.at(9100).orElseThrow();
    assertEquals(2.0 / 6, byInterval.endedBy(Cause.PLANNED), 1e-15);
    assertEquals(1.0 / 6, byInterval.endedBy(Cause.BREAKDOWN), 1e-15);
    assertEquals(0, byInterval.endedBy(Cause.CONDITION));
    assertEquals(0.5, byInterval.surviving(), 1e-15);
    assertEquals(0.25, incidence.at(12_300).orElseThrow().endedBy(Cause.CONDITION), 1e-15);
    assertEquals(1.0 / 6, incidence.at(9099.9).orElseThrow().endedBy(Cause.PLANNED), 1e-15);
    assertEquals(Optional.empty(), incidence.at(12_300.1));
    assertThrows(IllegalArgumentException.class, () -> incidence.at(-1));
  }

  @Test
  void aCauseThatEndedNoneHasNoShare() {
    SurvivalTally<Cause> tally = RandomTimes.tally(List.of(ObservedTime.ended(3, Cause.PLANNED)));
    var shares = CumulativeIncidence.of(tally).at(4).orElseThrow();
    assertEquals(Map.of(Cause.PLANNED, 1.0), shares.endedBy());
    assertEquals(0, shares.endedBy(Cause.BREAKDOWN));
    assertEquals(Optional.empty(), CumulativeIncidence.of(new SurvivalTally<Cause>()).at(0));
  }

  /** Source: Aalen and Johansen 1978: a duration has ended by one of its causes or goes on. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void sharesMakeOneAndNeverFall(long seed) {
    SurvivalTally<Cause> tally =
        RandomTimes.tally(RandomTimes.someWithDelayedEntry(new Random(seed)));
    CumulativeIncidence<Cause> incidence = CumulativeIncidence.of(tally);
    double before = 0;
    for (double time = 0; time <= tally.lastTime().orElseThrow(); time += 0.1) {
      var shares = incidence.at(time).orElseThrow();
      double ended = shares.endedBy().values().stream().mapToDouble(Double::doubleValue).sum();
      assertEquals(1, ended + shares.surviving(), 1e-12);
      assertTrue(before <= ended);
      before = ended;
    }
  }
}
