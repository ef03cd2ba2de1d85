package leadline.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ScaleTest {

  @Test
  void endsAtTheFirstRoundNumberAndTicksRoundly() {
    Scale scale = Scale.upTo(0.87, 0, 100);
    assertEquals(1.0, scale.end(), 1e-12);
    assertEquals(List.of(0.0, 0.2, 0.4), scale.ticks().subList(0, 3));
    assertEquals(6, scale.ticks().size());
  }

  @Test
  void aRoundGreatestNumberIsTheEnd() {
    assertEquals(30_000, Scale.upTo(30_000, 0, 1).end());
  }

  @Test
  void placesNumbersEvenlyAndTheExcessAtTheEnd() {
    Scale downwards = Scale.upTo(10, 320, 40);
    assertEquals(320, downwards.at(0));
    assertEquals(180, downwards.at(5));
    assertEquals(40, downwards.at(10));
    assertEquals(40, downwards.at(1_000));
  }

  @Test
  void nothingButZerosStillHasAnAxis() {
    assertTrue(Scale.upTo(0, 0, 100).end() > 0);
  }

  @Test
  void noGreatestNumberLiesOutsideOrLeavesMostOfTheAxisEmpty() {
    Random random = new Random(7);
    for (int draw = 0; draw < 2_000; draw++) {
      double greatest = Math.pow(10, 12 * random.nextDouble() - 6);
      Scale scale = Scale.upTo(greatest, 0, 1);
      assertTrue(scale.end() >= greatest * (1 - 1e-9), greatest + " in " + scale);
      assertTrue(scale.end() <= greatest * 2, greatest + " in " + scale);
      assertTrue(scale.ticks().size() >= 3 && scale.ticks().size() <= 7, greatest + " in " + scale);
    }
  }
}
