package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdjustedPTest {

  /** Source: Benjamini and Hochberg 1995, section 3.2: their step-up rejects 4, Bonferroni's 3. */
  private static final double[] FIFTEEN = {
    .0001, .0004, .0019, .0095, .0201, .0278, .0298, .0344, .0459, .3240, .4262, .5719, .6528,
    .7590, 1.000
  };

  @Test
  void fourOfFifteenAreFalseAlarmsAtMostOnceInTwenty() {
    assertEquals(4, alarms(AdjustedP.benjaminiHochberg(FIFTEEN)));
    assertEquals(3, alarms(AdjustedP.holm(FIFTEEN)));
  }

  /** Source: the definitions, worked by hand: 3 x .01, 2 x .02, 1 x .03 is less; 3/3 x .03. */
  @Test
  void threeTestsInAnyOrder() {
    assertArrayEquals(new double[] {.04, .03, .04}, AdjustedP.holm(.03, .01, .02), 1e-15);
    assertArrayEquals(
        new double[] {.03, .03, .03}, AdjustedP.benjaminiHochberg(.03, .01, .02), 1e-15);
    assertArrayEquals(new double[] {1, 1}, AdjustedP.holm(.7, .9), 1e-15);
    assertArrayEquals(new double[] {.2}, AdjustedP.benjaminiHochberg(.2), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
  void impossibleChancesAreRefused(double chance) {
    assertThrows(IllegalArgumentException.class, () -> AdjustedP.holm(0.5, chance));
    assertThrows(IllegalArgumentException.class, () -> AdjustedP.benjaminiHochberg(chance));
  }

  private static long alarms(double... adjusted) {
    return Arrays.stream(adjusted).filter(p -> p <= 0.05).count();
  }
}
