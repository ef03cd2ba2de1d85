package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IntegratedShrinkageTest {

  private static final Confidence NINETY = Confidence.of(0.90);

  /**
   * Source: the definition of coverage. With 20 replications the average has a standard error of
   * about 0.4 points, that without spread of 1.
   */
  @Test
  void ninetyPercentLimitsCoverNinetyPercentOnAverageAndNoLessWithoutSpread() {
    ShrinkageCoverage coverage = new ShrinkageCoverage(20);
    double sum = 0;
    for (double variation : ShrinkageCoverage.VARIATIONS) {
      double share = coverage.of(variation);
      assertTrue(variation > 0 || share >= 0.88, "without spread: " + share);
      sum += share;
    }
    double average = sum / ShrinkageCoverage.VARIATIONS.length;
    assertTrue(average >= 0.88 && average <= 0.92, "on average: " + average);
  }

  /** Source: the integral does not depend on the points at which it is taken. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void fourTimesTheQuadraturePointsGiveTheSameLimits(long seed) {
    RateSample sample = sample(new Random(seed));
    IntegratedShrinkage coarse = IntegratedShrinkage.of(sample);
    IntegratedShrinkage fine = IntegratedShrinkage.of(sample, 96);
    for (PoissonRate unit : sample.rates()) {
      Limits limits = fine.limits(unit, NINETY);
      assertEquals(limits.lower(), coarse.limits(unit, NINETY).lower(), 1e-3 * fine.mean(unit));
      assertEquals(limits.upper(), coarse.limits(unit, NINETY).upper(), 1e-3 * limits.upper());
      assertEquals(fine.mean(unit), coarse.mean(unit), 1e-3 * fine.mean(unit));
    }
  }

  /** Source: the definitions: order and unit of exposure are of no account. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void orderChangesNothingAndExposureScales(long seed) {
    RateSample sample = sample(new Random(seed));
    List<PoissonRate> scaled = new ArrayList<>();
    sample
        .rates()
        .forEach(unit -> scaled.add(new PoissonRate(unit.events(), 16 * unit.exposure())));
    Collections.shuffle(scaled, new Random(seed));
    IntegratedShrinkage one = IntegratedShrinkage.of(sample);
    IntegratedShrinkage other = IntegratedShrinkage.of(new RateSample(scaled));
    for (PoissonRate unit : sample.rates()) {
      PoissonRate likewise = new PoissonRate(unit.events(), 16 * unit.exposure());
      Limits limits = one.limits(unit, NINETY);
      assertEquals(one.mean(unit), 16 * other.mean(likewise), 1e-9 * one.mean(unit));
      assertEquals(
          limits.upper(), 16 * other.limits(likewise, NINETY).upper(), 1e-8 * limits.upper());
    }
  }

  /** Source: the definition: limits enclose the mean and widen with confidence; no sample fails. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void limitsEncloseTheMeanAndWidenWithConfidence(long seed) {
    Random random = new Random(seed);
    RateSample sample =
        seed % 4 == 0
            ? new RateSample(Collections.nCopies(1 + random.nextInt(9), new PoissonRate(0, 7)))
            : sample(random);
    IntegratedShrinkage shrinkage = IntegratedShrinkage.of(sample);
    for (PoissonRate unit : sample.rates()) {
      Limits narrow = shrinkage.limits(unit, NINETY);
      Limits wide = shrinkage.limits(unit, Confidence.of(0.99));
      assertTrue(narrow.lower() <= shrinkage.mean(unit) && shrinkage.mean(unit) <= narrow.upper());
      assertTrue(wide.lower() <= narrow.lower() && narrow.upper() < wide.upper());
    }
  }

  private static RateSample sample(Random random) {
    List<PoissonRate> rates = new ArrayList<>();
    int units = 2 + random.nextInt(12);
    for (int unit = 0; unit < units; unit++) {
      rates.add(
          new PoissonRate(
              random.nextInt(1 + random.nextInt(15)), 500 + 20_000 * random.nextDouble()));
    }
    return new RateSample(rates);
  }
}
