package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PoissonRateTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  /** Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 8.4.5.1, worked example. */
  @Test
  void twoFailuresInTwoMonths() {
    Limits months = new PoissonRate(2, 2).meanTimeLimits(Confidence.of(0.90));
    assertEquals(0.3177, months.lower(), 5e-5);
    assertEquals(5.628, months.upper(), 5e-4);
  }

  /** Source: the chi-squared quantiles of NIST/SEMATECH e-Handbook 8.4.5.1, worked out apart. */
  @Test
  void threeEventsInFourHundredTwelveThousandHours() {
    PoissonRate perHour = new PoissonRate(3, 412_000);
    assertEquals(7.28, 1e6 * perHour.rate(), 5e-3);
    assertEquals(1.50, 1e6 * perHour.limits(NINETY_FIVE).lower(), 5e-3);
    assertEquals(21.28, 1e6 * perHour.limits(NINETY_FIVE).upper(), 5e-3);
  }

  /** Source: -ln 0.05 and -ln 0.025 over the exposure, since no event has chance exp(-rate T). */
  @Test
  void noEventInNinetySixThousandHours() {
    PoissonRate perHour = new PoissonRate(0, 96_000);
    assertEquals(31.2, 1e6 * perHour.upperLimit(NINETY_FIVE), 0.05);
    assertEquals(-Math.log(0.05) / 96_000, perHour.upperLimit(NINETY_FIVE), 1e-15);
    assertEquals(38.43, 1e6 * perHour.limits(NINETY_FIVE).upper(), 5e-3);
    assertEquals(-Math.log(0.025) / 96_000, perHour.limits(NINETY_FIVE).upper(), 1e-15);
    assertEquals(0, perHour.limits(NINETY_FIVE).lower());
    assertEquals(0, perHour.lowerLimit(NINETY_FIVE));
  }

  /** Source: -ln(1 - tail) over the exposure, as an event or more has chance 1 - exp(-rate T). */
  @Test
  void theLimitOfARareEventKeepsItsDigits() {
    double exact = -Math.log1p(-1e-12) / 5e6;
    double limit = new PoissonRate(1, 5e6).limits(Confidence.of(1 - 2e-12)).lower();
    assertEquals(exact, limit, 1e-3 * exact);
    double upper = new PoissonRate(0, 5e6).upperLimit(Confidence.of(1e-9));
    assertEquals(1e-9 / 5e6, upper, 1e-6 * 1e-9 / 5e6);
  }

  /** Source: NIST/SEMATECH e-Handbook 8.4.5.1: no failure sets a lower limit only. */
  @Test
  void withoutEventsTheMeanTimeHasNoUpperLimit() {
    PoissonRate none = new PoissonRate(0, 1000);
    assertEquals(Double.POSITIVE_INFINITY, none.meanTime());
    assertEquals(Double.POSITIVE_INFINITY, none.meanTimeLimits(NINETY_FIVE).upper());
    assertEquals(1000 / -Math.log(0.025), none.meanTimeLimits(NINETY_FIVE).lower(), 1e-9);
    assertEquals(Optional.empty(), none.meanTimeLimitsEndedByEvent(NINETY_FIVE));
  }

  @ParameterizedTest
  @CsvSource({"-1, 10", "1, 0", "1, -5", "1, NaN", "1, Infinity"})
  void impossibleCountsAndExposuresAreRefused(long events, double exposure) {
    assertThrows(IllegalArgumentException.class, () -> new PoissonRate(events, exposure));
  }

  /** Source: the definition of a confidence interval; a wider one encloses a narrower. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void limitsEncloseTheRateWidenWithConfidenceAndScaleWithExposure(long seed) {
    Random random = new Random(seed);
    for (int repeat = 0; repeat < 50; repeat++) {
      PoissonRate rate = new PoissonRate(random.nextInt(60), 1 + 1e5 * random.nextDouble());
      double level = 0.05 + 0.9 * random.nextDouble();
      Limits narrow = rate.limits(Confidence.of(level));
      Limits wide = rate.limits(Confidence.of(level + 0.04));
      assertTrue(narrow.lower() <= rate.rate() && rate.rate() <= narrow.upper());
      assertTrue(wide.lower() <= narrow.lower() && narrow.upper() < wide.upper());
      Limits scaled =
          new PoissonRate(rate.events(), 8 * rate.exposure()).limits(Confidence.of(level));
      assertEquals(narrow, new Limits(8 * scaled.lower(), 8 * scaled.upper()));
    }
  }
}
