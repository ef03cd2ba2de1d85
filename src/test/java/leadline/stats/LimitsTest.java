package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

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
}
