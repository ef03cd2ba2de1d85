package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import leadline.stats.RandomCovariates.Known;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Source of the laws: age and covariates have no unit, a weight is a count, an exact age is an
 * interval of no width, and hazards of two groups that are proportional and Weibull have one shape.
 */
class WeibullRegressionLawsTest {

  private static final Confidence NINETY = Confidence.of(0.9);
  private static final RegressionQuantity LOAD = RegressionQuantity.hazardRatio("load");
  private static final RegressionQuantity MAKER = RegressionQuantity.hazardRatio("maker");
  private static final RegressionQuantity SHAPE = RegressionQuantity.shape();
  private static final RegressionQuantity SCALE = RegressionQuantity.scale();

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void hoursMultipliedMultiplyTheScaleAndNothingElse(long seed) {
    List<Known> lives = RandomCovariates.someWithDelayedEntry(new Random(seed));
    WeibullRegression one = RandomCovariates.regression(lives);
    WeibullRegression other =
        RandomCovariates.regression(
            lives.stream()
                .map(
                    known ->
                        new Known(
                            RandomLives.scaled(known.life(), 3.7),
                            known.load(),
                            known.maker(),
                            known.weight()))
                .toList());
    Stream.of(LOAD, MAKER, SHAPE).forEach(quantity -> assertAlike(one, other, quantity, 1));
    assertAlike(one, other, SCALE, 3.7);
    assertEquals(
        one.test(List.of("load")).statistic(), other.test(List.of("load")).statistic(), 1e-8);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void aCovariateCountedFromElsewhereInAnotherUnitMovesTheScaleAndItsOwnRatio(long seed) {
    List<Known> lives = RandomCovariates.someWithDelayedEntry(new Random(seed));
    WeibullRegression one = RandomCovariates.regression(lives);
    WeibullRegression other =
        RandomCovariates.regression(
            lives.stream()
                .map(
                    known ->
                        new Known(
                            known.life(), 2 * known.load() + 50, known.maker(), known.weight()))
                .toList());
    Stream.of(MAKER, SHAPE).forEach(quantity -> assertAlike(one, other, quantity, 1));
    assertEquals(one.coefficient("load"), 2 * other.coefficient("load"), 1e-9);
    assertEquals(one.logLikelihood(), other.logLikelihood(), 1e-9);
    double moved = 50 * other.coefficient("load") / one.estimate(SHAPE);
    assertEquals(one.logarithm(SCALE) + moved, other.logarithm(SCALE), 1e-8);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void neitherOrderNorSplitWeightsNorEntryAtNoAgeMatter(long seed) {
    Random random = new Random(seed);
    List<Known> lives = RandomCovariates.watchedFromNew(random);
    WeibullRegression one = RandomCovariates.regression(lives);
    List<Known> split = new ArrayList<>();
    for (Known known : lives) {
      for (int part = 0; part < known.weight(); part++) {
        split.add(new Known(known.life().enteredAt(0), known.load(), known.maker(), 1));
      }
    }
    Collections.shuffle(split, random);
    WeibullRegression other = RandomCovariates.regression(split);
    for (RegressionQuantity quantity : List.of(LOAD, MAKER, SHAPE, SCALE)) {
      assertEquals(one.estimate(quantity), other.estimate(quantity));
      assertEquals(one.profileLimits(quantity, NINETY), other.profileLimits(quantity, NINETY));
    }
    assertEquals(one.logLikelihood(), other.logLikelihood());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 4, 5, 6, 7, 8})
  void anIntervalShrinkingToAPointTendsToTheExactAge(long seed) {
    List<Known> lives =
        RandomCovariates.someWithDelayedEntry(new Random(seed)).stream()
            .filter(known -> !(known.life() instanceof Life.FailedBetween))
            .toList();
    WeibullRegression exact = RandomCovariates.regression(lives);
    for (double width : new double[] {1e-2, 1e-4, 1e-6, 1e-8}) {
      WeibullRegression narrow =
          RandomCovariates.regression(
              lives.stream()
                  .map(
                      known ->
                          new Known(
                              RandomLives.widened(known.life(), width),
                              known.load(),
                              known.maker(),
                              known.weight()))
                  .toList());
      double tolerance = Math.max(1e-8, width);
      for (RegressionQuantity quantity : List.of(LOAD, MAKER, SHAPE, SCALE)) {
        assertEquals(exact.logarithm(quantity), narrow.logarithm(quantity), tolerance);
        assertEquals(
            exact.standardErrorOfLogarithm(quantity),
            narrow.standardErrorOfLogarithm(quantity),
            tolerance);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void withoutCovariatesItIsThePlainFit(long seed) {
    List<Life> lives = RandomLives.someWithDelayedEntry(new Random(seed));
    RegressionData.Builder builder = new RegressionData.Builder(List.of());
    lives.forEach(life -> builder.add(life, List.of(), 1));
    WeibullRegression regression = WeibullRegression.of(builder.build()).regression().orElseThrow();
    LifeFit fit = LifeFit.of(LifeFamily.WEIBULL, LifeData.of(lives)).fit().orElseThrow();
    assertEquals(fit.logLikelihood(), regression.logLikelihood(), 1e-9);
    assertEquals(fit.aic(), regression.aic(), 1e-9);
    assertEquals(fit.mu(), regression.logarithm(SCALE), 1e-9);
    assertEquals(fit.standardErrorOfMu(), regression.standardErrorOfLogarithm(SCALE), 1e-9);
    assertEquals(fit.standardErrorOfLogSigma(), regression.standardErrorOfLogarithm(SHAPE), 1e-9);
    assertAlike(
        fit.profileLimits(LifeQuantity.shape(), NINETY), regression.profileLimits(SHAPE, NINETY));
    assertAlike(
        fit.profileLimits(LifeQuantity.scale(), NINETY), regression.profileLimits(SCALE, NINETY));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void twoGroupsAreTwoFitsOfOneShape(long seed) {
    List<Known> lives = RandomCovariates.someWithDelayedEntry(new Random(seed));
    RegressionData.Builder builder = new RegressionData.Builder(List.of("maker"));
    lives.forEach(known -> builder.add(known.life(), List.of(known.maker()), 1));
    WeibullRegression regression = WeibullRegression.of(builder.build()).regression().orElseThrow();
    double shape = regression.estimate(SHAPE);
    LifeData zero = LifeData.of(of(lives, 0));
    LifeData one = LifeData.of(of(lives, 1));
    double scaleOfOne =
        regression.estimate(SCALE) * Math.exp(regression.acceleratedCoefficient("maker"));
    assertEquals(1, fit(shape, zero).scale() / regression.estimate(SCALE), 1e-7);
    assertEquals(1, fit(shape, one).scale() / scaleOfOne, 1e-7);
    assertEquals(regression.logLikelihood(), together(shape, zero, one), 1e-9);
    for (double factor : new double[] {0.9, 0.999, 1.001, 1.1}) {
      assertTrue(together(factor * shape, zero, one) < regression.logLikelihood());
    }
  }

  private static List<Life> of(List<Known> lives, double maker) {
    return lives.stream().filter(known -> known.maker() == maker).map(Known::life).toList();
  }

  private static double together(double shape, LifeData one, LifeData other) {
    return fit(shape, one).logLikelihood() + fit(shape, other).logLikelihood();
  }

  private static KnownShapeFit fit(double shape, LifeData data) {
    return KnownShapeFit.of(shape, data).fit().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void limitsContainTheEstimateAndWidenWithConfidence(long seed) {
    WeibullRegression regression =
        RandomCovariates.regression(RandomCovariates.someWithDelayedEntry(new Random(seed)));
    for (RegressionQuantity quantity : List.of(LOAD, MAKER, SHAPE, SCALE)) {
      double estimate = regression.estimate(quantity);
      Limits lastProfile = new Limits(estimate, estimate);
      Limits lastWald = new Limits(estimate, estimate);
      for (double level : new double[] {0.5, 0.8, 0.9, 0.95, 0.99}) {
        Limits profile = regression.profileLimits(quantity, Confidence.of(level));
        Limits wald = regression.waldLimits(quantity, Confidence.of(level));
        assertEncloses(profile, lastProfile);
        assertEncloses(wald, lastWald);
        lastProfile = profile;
        lastWald = wald;
      }
    }
  }

  private static void assertEncloses(Limits outer, Limits inner) {
    assertTrue(
        outer.lower() < inner.lower() && outer.upper() > inner.upper(), outer + " in " + inner);
  }

  private static void assertAlike(
      WeibullRegression one, WeibullRegression other, RegressionQuantity quantity, double factor) {
    assertEquals(1, factor * one.estimate(quantity) / other.estimate(quantity), 1e-8);
    Limits profile = one.profileLimits(quantity, NINETY);
    assertAlike(
        new Limits(factor * profile.lower(), factor * profile.upper()),
        other.profileLimits(quantity, NINETY));
    assertEquals(
        one.standardErrorOfLogarithm(quantity), other.standardErrorOfLogarithm(quantity), 1e-8);
  }

  private static void assertAlike(Limits one, Limits other) {
    assertEquals(1, one.lower() / other.lower(), 1e-7);
    assertEquals(1, one.upper() / other.upper(), 1e-7);
  }
}
