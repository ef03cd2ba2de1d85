package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MidPTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  /** Source: the definition: at each limit, the chance of beyond and half that of as many. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 17, 140})
  void halfTheChanceOfTheEventsSeenIsCounted(int events) {
    Limits limits = new PoissonRate(events, 4).midPLimits(NINETY_FIVE);
    PoissonDistribution low = new PoissonDistribution(4 * limits.lower());
    PoissonDistribution high = new PoissonDistribution(4 * limits.upper());
    assertEquals(0.025, 1 - low.cumulativeProbability(events) + low.probability(events) / 2, 1e-10);
    assertEquals(
        0.025, high.cumulativeProbability(events - 1) + high.probability(events) / 2, 1e-10);
  }

  /** Source: as above, for the binomial distribution. */
  @ParameterizedTest
  @CsvSource({"1, 29", "81, 263", "3, 4", "15, 148"})
  void halfTheChanceOfTheSuccessesSeenIsCounted(int successes, int trials) {
    Limits limits = new Proportion(successes, trials).midP(NINETY_FIVE);
    BinomialDistribution low = new BinomialDistribution(trials, limits.lower());
    BinomialDistribution high = new BinomialDistribution(trials, limits.upper());
    assertEquals(
        0.025, 1 - low.cumulativeProbability(successes) + low.probability(successes) / 2, 1e-10);
    assertEquals(
        0.025, high.cumulativeProbability(successes - 1) + high.probability(successes) / 2, 1e-10);
  }

  /** Source: the definition solved by hand: half of exp(-m), or of (1 - p)^n, is the tail. */
  @Test
  void nothingSeenSetsAnUpperLimitOnly() {
    Limits rate = new PoissonRate(0, 10).midPLimits(NINETY_FIVE);
    assertEquals(0, rate.lower());
    assertEquals(-Math.log(0.05) / 10, rate.upper(), 1e-12);
    Limits none = new Proportion(0, 20).midP(NINETY_FIVE);
    assertEquals(0, none.lower());
    assertEquals(1 - Math.pow(0.05, 1 / 20.0), none.upper(), 1e-12);
    Limits all = new Proportion(20, 20).midP(NINETY_FIVE);
    assertEquals(1 - none.upper(), all.lower(), 1e-12);
    assertEquals(1, all.upper());
  }

  /** Source: Lancaster 1961: they lie within the exact limits; a wider one encloses a narrower. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void limitsLieWithinTheExactOnesAndWidenWithConfidence(long seed) {
    Random random = new Random(seed);
    PoissonRate rate = new PoissonRate(random.nextInt(40), 1000);
    int trials = 1 + random.nextInt(60);
    Proportion share = new Proportion(random.nextInt(trials + 1), trials);
    Confidence low = Confidence.of(0.05 + 0.85 * random.nextDouble());
    requireInside(rate.midPLimits(low), rate.limits(low));
    requireInside(share.midP(low), share.clopperPearson(low));
    Confidence high = Confidence.of(low.level() + 0.05);
    requireInside(rate.midPLimits(low), rate.midPLimits(high));
    requireInside(share.midP(low), share.midP(high));
    assertTrue(rate.midPLimits(low).lower() <= rate.rate());
    assertTrue(rate.rate() <= rate.midPLimits(low).upper());
  }

  private static void requireInside(Limits narrow, Limits wide) {
    assertTrue(wide.lower() <= narrow.lower() && narrow.upper() <= wide.upper());
  }
}
