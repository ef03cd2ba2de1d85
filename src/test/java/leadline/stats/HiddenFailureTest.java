package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HiddenFailureTest {

  private static final AgeingLife CONSTANT = new AgeingLife.Weibull(1, 50_000);
  private static final AgeingLife WEARING = new AgeingLife.Weibull(2, 20_000);

  /** Source: 1 - (1 - exp(-lambda tau)) / (lambda tau), Rausand and Hoyland 2004, section 10.3. */
  @Test
  void theMeanUnavailabilityBetweenTests() {
    double expected = 1 + Math.expm1(-0.16) / 0.16;
    assertEquals(expected, new HiddenFailure(CONSTANT, 1).unavailability(8000), 1e-12);
    assertEquals(0.0759, expected, 5e-5);
    assertEquals(0.0509, new HiddenFailure(WEARING, 1).unavailability(8000), 5e-5);
  }

  /** Source: the same formulas solved for the interval, computed apart. */
  @Test
  void theIntervalForARequiredUnavailability() {
    assertEquals(10_728, new HiddenFailure(CONSTANT, 1).intervalFor(0.10), 0.5);
    assertEquals(11_495, new HiddenFailure(WEARING, 1).intervalFor(0.10), 0.5);
  }

  /**
   * Source: 1 - (1/lambda) / (tau / (1 - exp(-lambda tau)) + tau (1/p - 1)): the mean time alive
   * over the mean time from one renewal to the next, the number of tests missed being geometric.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.9, 0.5, 0.25, 0.03})
  void aTestMadeOnlyNowAndThen(double tested) {
    double interval = 8000;
    double cycle = interval / -Math.expm1(-0.16) + interval * (1 / tested - 1);
    double expected = 1 - 50_000 / cycle;
    assertEquals(expected, new HiddenFailure(CONSTANT, tested).unavailability(interval), 1e-9);
  }

  /** Source: the formula above, rounded. */
  @Test
  void openedAtHalfOrAQuarterOfTheOverhauls() {
    assertEquals(0.195, new HiddenFailure(CONSTANT, 0.5).unavailability(8000), 5e-4);
    assertEquals(0.360, new HiddenFailure(CONSTANT, 0.25).unavailability(8000), 5e-4);
  }

  /** Source: the definition: what is found is what was asked for; rarer tests must come sooner. */
  @ParameterizedTest
  @CsvSource({"0.001, 1", "0.05, 0.5", "0.3, 0.2", "0.9, 1"})
  void theIntervalGivesTheUnavailabilityBack(double required, double tested) {
    HiddenFailure function = new HiddenFailure(WEARING, tested);
    double interval = function.intervalFor(required);
    assertEquals(required, function.unavailability(interval), 1e-9);
    assertTrue(interval <= new HiddenFailure(WEARING, 1).intervalFor(required) * (1 + 1e-9));
    HiddenFailure inDays = new HiddenFailure(new AgeingLife.Weibull(2, 20_000 / 24.0), tested);
    assertEquals(interval, 24 * inDays.intervalFor(required), 1e-7 * interval);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.1, Double.NaN})
  void impossibleSharesAreRefused(double share) {
    assertThrows(IllegalArgumentException.class, () -> new HiddenFailure(WEARING, share));
    HiddenFailure function = new HiddenFailure(WEARING, 1);
    assertThrows(IllegalArgumentException.class, () -> function.intervalFor(share));
  }
}
