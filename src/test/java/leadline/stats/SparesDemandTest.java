package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SparesDemandTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  /** Source: the Poisson table with mean 2.7: .943 up to 5, .979 up to 6. */
  @Test
  void sixSparesForADemandOfTwoPointSeven() {
    SparesDemand demand = new SparesDemand.AtKnownRate(2.7);
    assertEquals(6, demand.holdingFor(NINETY_FIVE));
    assertEquals(0.943, demand.sufficiencyOf(5), 5e-4);
    assertEquals(0.979, demand.sufficiencyOf(6), 5e-4);
  }

  /** Source: the sum of negative-binomial chances, computed apart. */
  @Test
  void anUncertainRateAsksForOneMore() {
    SparesDemand demand = new SparesDemand.AtUncertainRate(new GammaPoisson(3.5, 140_000), 108_000);
    assertEquals(2.7, demand.mean(), 1e-12);
    assertEquals(7, demand.holdingFor(NINETY_FIVE));
    assertEquals(0.966, demand.sufficiencyOf(7), 5e-4);
  }

  /** Source: the binomial distribution of 18 parts with one chance, which they share. */
  @Test
  void eighteenAgeingSprings() {
    double chance =
        SparesDemand.OfAgeingParts.chanceToFail(new AgeingLife.Weibull(2, 20_000), 6000, 3000);
    SparesDemand demand = new SparesDemand.OfAgeingParts(Collections.nCopies(18, chance));
    assertEquals(1.92, demand.mean(), 5e-3);
    assertEquals(4, demand.holdingFor(NINETY_FIVE));
    assertEquals(0.964, demand.sufficiencyOf(4), 5e-4);
    BinomialDistribution binomial = new BinomialDistribution(18, chance);
    for (int spares = 0; spares <= 18; spares++) {
      assertEquals(binomial.cumulativeProbability(spares), demand.sufficiencyOf(spares), 1e-12);
    }
  }

  /** Source: the chances of two different parts, multiplied by hand. */
  @Test
  void twoPartsThatDiffer() {
    SparesDemand demand = new SparesDemand.OfAgeingParts(List.of(0.1, 0.4));
    assertEquals(0.54, demand.sufficiencyOf(0), 1e-15);
    assertEquals(0.96, demand.sufficiencyOf(1), 1e-15);
    assertEquals(1, demand.sufficiencyOf(2));
    assertEquals(1, demand.holdingFor(NINETY_FIVE));
    assertEquals(0, demand.holdingFor(Confidence.of(0.5)));
  }

  /** Source: the gamma distribution with a large shape tends to a known rate. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.7, 3, 40, 1000})
  void aWellKnownRateIsAKnownOne(double mean) {
    SparesDemand known = new SparesDemand.AtKnownRate(mean);
    SparesDemand nearly = new SparesDemand.AtUncertainRate(new GammaPoisson(1e9, 1e9), mean);
    long hold = known.holdingFor(NINETY_FIVE);
    assertEquals(known.sufficiencyOf(hold), nearly.sufficiencyOf(hold), 1e-5);
    assertTrue(known.sufficiencyOf(hold) >= 0.95);
    assertTrue(hold == 0 || known.sufficiencyOf(hold - 1) < 0.95);
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "NaN", "Infinity"})
  void impossibleDemandsAreRefused(double value) {
    GammaPoisson rate = new GammaPoisson(1, 1);
    assertThrows(IllegalArgumentException.class, () -> new SparesDemand.AtKnownRate(value));
    assertThrows(
        IllegalArgumentException.class, () -> new SparesDemand.AtUncertainRate(rate, value));
    assertThrows(
        IllegalArgumentException.class, () -> new SparesDemand.OfAgeingParts(List.of(value - 1)));
    assertThrows(IllegalArgumentException.class, () -> new GammaPoisson(value, 1));
    assertThrows(IllegalArgumentException.class, () -> new GammaPoisson(1, value));
  }

  @Test
  void noPartAsksForNothing() {
    assertThrows(IllegalArgumentException.class, () -> new SparesDemand.OfAgeingParts(List.of()));
  }
}
