package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LimitsTest {

  @ParameterizedTest
  @CsvSource({"2, 1", "NaN, 1", "1, NaN", "-Infinity, 0", "Infinity, Infinity"})
  void limitsThatEncloseNothingAreRefused(double lower, double upper) {
    assertThrows(IllegalArgumentException.class, () -> new Limits(lower, upper));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.1, 95, Double.NaN})
  void aConfidenceIsAFraction(double level) {
    assertThrows(IllegalArgumentException.class, () -> Confidence.of(level));
  }

  /** Source: the standard normal table, 1.959964 and 1.644854. */
  @Test
  void theNormalQuantileLeavesHalfOfTheRestOnEachSide() {
    assertEquals(1.959964, Confidence.of(0.95).normalQuantile(), 5e-7);
    assertEquals(1.644854, Confidence.of(0.90).normalQuantile(), 5e-7);
  }

  /** Source: the t table, 2.306 with 8 degrees of freedom: the root of 10 log(1 + 2.306^2 / 8). */
  @Test
  void fewLivesAskForAHigherLevelAndManyForTheSame() {
    assertEquals(2.2575, Confidence.of(0.95).forSoFewLives(10).normalQuantile(), 5e-4);
    assertEquals(1.959964, Confidence.of(0.95).forSoFewLives(1e7).normalQuantile(), 1e-6);
    assertThrows(IllegalArgumentException.class, () -> Confidence.of(0.95).forSoFewLives(0));
  }

  /**
   * Source: by hand, a mean of 6 of 12 with a standard error of 1: log odds of 0, with a standard
   * error of 12 / 36.
   */
  @Test
  void logitLimitsOfARestrictedMean() {
    Limits limits = new RestrictedMean(6, 1, 12).logitLimits(Confidence.of(0.95)).orElseThrow();
    assertEquals(12 / (1 + Math.exp(1.959964 / 3)), limits.lower(), 1e-6);
    assertEquals(12 / (1 + Math.exp(-1.959964 / 3)), limits.upper(), 1e-6);
  }

  /** Source: the definition: no duration ended before the horizon, so no spread was seen. */
  @Test
  void aRestrictedMeanWithoutSpreadHasNoLogitLimits() {
    assertEquals(Optional.empty(), new RestrictedMean(12, 0, 12).logitLimits(Confidence.of(0.95)));
  }
}
