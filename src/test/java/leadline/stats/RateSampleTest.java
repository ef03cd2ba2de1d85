package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RateSampleTest {

  /** Four plants, exposures in million hours: an example made for the project, computed apart. */
  private static final RateSample FOUR =
      new RateSample(
          List.of(
              new PoissonRate(2, 0.30),
              new PoissonRate(0, 0.25),
              new PoissonRate(6, 0.28),
              new PoissonRate(1, 0.35)));

  private static final RateSample ALIKE =
      new RateSample(Collections.nCopies(5, new PoissonRate(3, 10)));

  private static final RateSample NONE =
      new RateSample(Collections.nCopies(4, new PoissonRate(0, 10)));

  /** Source: computed apart from the formulas that the multi-sample rate names. */
  @Test
  void fourPlantsDifferMoreThanChanceLetsThem() {
    MultiSampleRate rate = MultiSampleRate.of(FOUR).orElseThrow();
    assertEquals(7.63, rate.pooled(), 5e-3);
    assertEquals(60.46, rate.variance(), 5e-3);
    assertEquals(7.72, rate.mean(), 5e-3);
    assertEquals(0.38, rate.ninetyPercentRange().lower(), 5e-3);
    assertEquals(23.2, rate.ninetyPercentRange().upper(), 0.05);
    assertFalse(rate.fallback());
    Limits pooled = FOUR.pooled().limits(Confidence.of(0.90));
    assertEquals(3.98, pooled.lower(), 5e-3);
    assertEquals(13.3, pooled.upper(), 0.05);
    assertEquals(9.98, FOUR.chiSquared().orElseThrow(), 5e-3);
    assertEquals(3, FOUR.degreesOfFreedom());
    assertEquals(0.019, FOUR.homogeneity().orElseThrow(), 5e-4);
  }

  /** Source: the formulas: no spread is left, neither by moments nor about the pooled rate. */
  @Test
  void unitsThatAreAlikeHaveOneRate() {
    MultiSampleRate rate = MultiSampleRate.of(ALIKE).orElseThrow();
    assertTrue(rate.fallback());
    assertEquals(0, rate.variance());
    assertEquals(new Limits(0.3, 0.3), rate.ninetyPercentRange());
    assertEquals(Optional.empty(), GammaPoisson.fit(ALIKE));
    assertEquals(0, ALIKE.chiSquared().orElseThrow());
    assertEquals(1, ALIKE.homogeneity().orElseThrow());
  }

  @Test
  void withoutAnEventNothingIsKnownOfSpread() {
    assertEquals(Optional.empty(), MultiSampleRate.of(NONE));
    assertEquals(Optional.empty(), GammaPoisson.fit(NONE));
    assertEquals(OptionalDouble.empty(), NONE.chiSquared());
    assertEquals(OptionalDouble.empty(), NONE.homogeneity());
    assertEquals(0, NONE.poissonLogLikelihood());
    RateSample one = new RateSample(List.of(new PoissonRate(4, 10)));
    assertEquals(Optional.empty(), MultiSampleRate.of(one));
    assertEquals(Optional.empty(), GammaPoisson.fit(one));
    assertEquals(OptionalDouble.empty(), one.homogeneity());
  }

  @Test
  void noUnitIsNoSample() {
    assertThrows(IllegalArgumentException.class, () -> new RateSample(List.of()));
  }

  /** Source: the definition of a maximum; it does not depend on the unit of exposure. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void noPriorNearbyIsLikelierAndExposureScales(long seed) {
    RateSample sample = sample(new Random(seed));
    RateSample scaled =
        new RateSample(
            sample.rates().stream()
                .map(unit -> new PoissonRate(unit.events(), 1000 * unit.exposure()))
                .toList());
    GammaPoisson fit = GammaPoisson.fit(sample).orElseThrow();
    GammaPoisson likewise = GammaPoisson.fit(scaled).orElseThrow();
    assertEquals(fit.shape(), likewise.shape(), 1e-8 * fit.shape());
    assertEquals(1000 * fit.exposure(), likewise.exposure(), 1e-5 * fit.exposure());
    double best = fit.logLikelihood(sample);
    for (double factor : new double[] {0.9, 0.999, 1.001, 1.1}) {
      assertTrue(
          best >= new GammaPoisson(factor * fit.shape(), fit.exposure()).logLikelihood(sample));
      assertTrue(
          best >= new GammaPoisson(fit.shape(), factor * fit.exposure()).logLikelihood(sample));
    }
    assertTrue(best > sample.poissonLogLikelihood());
  }

  /** Source: the gamma distribution with a large shape tends to one common rate. */
  @Test
  void aTightPriorTendsToTheCommonRate() {
    GammaPoisson tight = new GammaPoisson(1e12, 1e12 / FOUR.pooled().rate());
    assertEquals(FOUR.poissonLogLikelihood(), tight.logLikelihood(FOUR), 1e-8);
  }

  /** Source: half of the chi-squared table with one degree of freedom, 2.706 and 3.841. */
  @Test
  void halfTheChanceOfChiSquared() {
    assertEquals(0.05, GammaPoisson.chanceOfLikelihoodRatio(2.7055), 1e-5);
    assertEquals(0.025, GammaPoisson.chanceOfLikelihoodRatio(3.8415), 1e-5);
  }

  /** Rates drawn so far apart that a spread is always found. */
  private static RateSample sample(Random random) {
    List<PoissonRate> rates = new ArrayList<>();
    for (int unit = 0; unit < 4 + random.nextInt(20); unit++) {
      rates.add(new PoissonRate(random.nextInt(3), 1 + 9 * random.nextDouble()));
      rates.add(new PoissonRate(10 + random.nextInt(20), 1 + 9 * random.nextDouble()));
    }
    return new RateSample(rates);
  }

  /** Source: units have no order, exposure no unit. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void neitherOrderNorUnitMatters(long seed) {
    RateSample sample = sample(new Random(seed));
    List<PoissonRate> altered = new ArrayList<>();
    sample
        .rates()
        .forEach(unit -> altered.add(new PoissonRate(unit.events(), 1000 * unit.exposure())));
    Collections.shuffle(altered, new Random(seed));
    RateSample other = new RateSample(altered);
    assertEquals(sample.chiSquared().orElseThrow(), other.chiSquared().orElseThrow(), 1e-9);
    assertEquals(sample.overdispersionScore(), other.overdispersionScore(), 1e-9);
    MultiSampleRate one = MultiSampleRate.of(sample).orElseThrow();
    MultiSampleRate scaled = MultiSampleRate.of(other).orElseThrow();
    assertEquals(
        1, one.ninetyPercentRange().upper() / scaled.ninetyPercentRange().upper() / 1000, 1e-9);
    assertEquals(one.fallback(), scaled.fallback());
  }

  /** Source: the definition of limits. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void plugInLimitsContainTheMedianAndWidenWithConfidence(long seed) {
    GammaPoisson fit = GammaPoisson.fit(sample(new Random(seed))).orElseThrow();
    GammaPoisson after = fit.after(new PoissonRate(3, 20));
    double last = 0;
    Limits inner = after.limits(Confidence.of(1e-6));
    for (double level : new double[] {0.5, 0.8, 0.9, 0.95, 0.99}) {
      Limits limits = after.limits(Confidence.of(level));
      assertTrue(limits.lower() < inner.lower() && limits.upper() > inner.upper());
      assertTrue(limits.upper() - limits.lower() > last);
      last = limits.upper() - limits.lower();
      inner = limits;
    }
  }
}
