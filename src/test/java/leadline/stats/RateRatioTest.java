package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RateRatioTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  /**
   * Source: the conditional binomial (Nelson 1982, Applied Life Data Analysis), summed by hand: of
   * 8 events with chance 0.4 each, 6 or more have chance 28 x .4^6 x .6^2 + 8 x .4^7 x .6 + .4^8.
   */
  @Test
  void sixEventsInSixtyThousandHoursAgainstTwoInNinety() {
    RateRatio ratio = new RateRatio(new PoissonRate(6, 60_000), new PoissonRate(2, 90_000));
    double byHand = 28 * Math.pow(.4, 6) * .36 + 8 * Math.pow(.4, 7) * .6 + Math.pow(.4, 8);
    assertEquals(byHand, ratio.pGreater(), 1e-14);
    assertEquals(.0498, ratio.pGreater(), 5e-5);
    assertEquals(.0996, ratio.pCentral(), 5e-5);
  }

  /** Source: with no event there is one outcome only, and nothing to tell the rates apart. */
  @Test
  void withoutEventsNothingIsKnownOfTheRatio() {
    RateRatio ratio = new RateRatio(new PoissonRate(0, 10), new PoissonRate(0, 20));
    assertEquals(OptionalDouble.empty(), ratio.ratio());
    assertEquals(new Limits(0, Double.POSITIVE_INFINITY), ratio.limits(NINETY_FIVE));
    assertEquals(1, ratio.pLess());
    assertEquals(1, ratio.pGreater());
    assertEquals(1, ratio.pCentral());
    assertEquals(1, ratio.pMid());
    assertEquals(1, ratio.pMinimumLikelihood());
  }

  /** Source: with all n events in the first, its share p has (p)^n = 0.025 at the lower limit. */
  @Test
  void anEventOnOneSideOnlyLeavesTheRatioOpenAbove() {
    RateRatio ratio = new RateRatio(new PoissonRate(4, 10), new PoissonRate(0, 20));
    double share = Math.pow(0.025, 0.25);
    assertEquals(OptionalDouble.of(Double.POSITIVE_INFINITY), ratio.ratio());
    assertEquals(2 * share / (1 - share), ratio.limits(NINETY_FIVE).lower(), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, ratio.limits(NINETY_FIVE).upper());
  }

  @Test
  void moreEventsThanCanBeComparedAreRefused() {
    PoissonRate many = new PoissonRate(Integer.MAX_VALUE, 1);
    PoissonRate one = new PoissonRate(1, 1);
    assertThrows(IllegalArgumentException.class, () -> new RateRatio(many, one));
  }

  /** Source: the limits invert the central test (Clopper and Pearson 1934), on either side of 1. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void limitsExcludeEqualityExactlyWhenTheCentralTestDoes(long seed) {
    Random random = new Random(seed);
    for (int repeat = 0; repeat < 50; repeat++) {
      RateRatio ratio =
          new RateRatio(
              new PoissonRate(random.nextInt(30), 1 + 100 * random.nextDouble()),
              new PoissonRate(1 + random.nextInt(30), 1 + 100 * random.nextDouble()));
      Limits limits = ratio.limits(NINETY_FIVE);
      assertEquals(ratio.pCentral() < 0.05, limits.lower() > 1 || limits.upper() < 1);
      RateRatio swapped = new RateRatio(/* first= */ ratio.second(), /* second= */ ratio.first());
      assertEquals(ratio.pLess(), swapped.pGreater());
      assertEquals(1 / limits.upper(), swapped.limits(NINETY_FIVE).lower(), 1e-9);
    }
  }

  /** Source: exposure has no unit, and which of two is the first is a matter of naming. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void limitsContainTheRatioWidenWithConfidenceAndKnowNoUnit(long seed) {
    Random random = new Random(seed);
    PoissonRate first = new PoissonRate(1 + random.nextInt(30), 1 + 100 * random.nextDouble());
    PoissonRate second = new PoissonRate(1 + random.nextInt(30), 1 + 100 * random.nextDouble());
    RateRatio ratio = new RateRatio(first, second);
    RateRatio scaled =
        new RateRatio(
            new PoissonRate(first.events(), 64 * first.exposure()),
            new PoissonRate(second.events(), 64 * second.exposure()));
    RateRatio swapped = new RateRatio(second, first);
    double estimate = ratio.ratio().orElseThrow();
    Limits last = new Limits(estimate, estimate);
    for (double level : new double[] {0.5, 0.8, 0.9, 0.95, 0.99}) {
      Limits limits = ratio.limits(Confidence.of(level));
      assertTrue(limits.lower() < last.lower() && limits.upper() > last.upper());
      assertEquals(1, scaled.limits(Confidence.of(level)).upper() / limits.upper(), 1e-12);
      assertEquals(1, swapped.limits(Confidence.of(level)).upper() * limits.lower(), 1e-9);
      last = limits;
    }
  }
}
