package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import leadline.stats.FitOutcome.Reason;
import leadline.stats.RandomCovariates.Known;
import leadline.stats.RegressionOutcome.Collinear;
import leadline.stats.RegressionOutcome.Edge;
import leadline.stats.RegressionOutcome.Separated;
import leadline.stats.RegressionOutcome.Separation;
import leadline.stats.RegressionOutcome.WithoutMaximum;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The likelihood written out a second time, and data for which it has no highest point. Source:
 * Lawless 2003, Statistical Models and Methods for Lifetime Data, section 6.3; Rockafellar 1970,
 * Convex Analysis, theorem 27.1, and Albert and Anderson 1984, Biometrika 71:1, applied by hand.
 */
class WeibullRegressionTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);
  private static final List<String> GROUP = List.of("group");

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noNeighbourIsLikelierByTheLikelihoodWrittenOut(long seed) {
    List<Known> lives = RandomCovariates.someWithDelayedEntry(new Random(seed));
    WeibullRegression regression = RandomCovariates.regression(lives);
    double[] top = {
      regression.logarithm(RegressionQuantity.scale()),
      regression.logarithm(RegressionQuantity.shape()),
      regression.coefficient("load"),
      regression.coefficient("maker")
    };
    double[] errors = {
      regression.standardErrorOfLogarithm(RegressionQuantity.scale()),
      regression.standardErrorOfLogarithm(RegressionQuantity.shape()),
      regression.standardErrorOfLogarithm(RegressionQuantity.hazardRatio("load")),
      regression.standardErrorOfLogarithm(RegressionQuantity.hazardRatio("maker"))
    };
    assertEquals(writtenOut(lives, top), regression.logLikelihood(), 1e-8);
    Random random = new Random(seed);
    for (int neighbour = 0; neighbour < 200; neighbour++) {
      double away = Math.pow(10, -3 * random.nextDouble());
      double[] there =
          IntStream.range(0, top.length)
              .mapToDouble(index -> top[index] + away * errors[index] * random.nextGaussian())
              .toArray();
      assertTrue(writtenOut(lives, there) < regression.logLikelihood());
    }
    for (int index = 0; index < errors.length; index++) {
      assertEquals(0, regression.slopes().get(index) * errors[index], 1e-8);
    }
  }

  /** Along log scale, log shape, load and maker. */
  private static double writtenOut(List<Known> lives, double[] point) {
    double sum = 0;
    for (Known known : lives) {
      double shape = Math.exp(point[1]);
      double ratio = Math.exp(point[2] * known.load() + point[3] * known.maker());
      DoubleUnaryOperator hazard = age -> Math.pow(age / Math.exp(point[0]), shape) * ratio;
      Life life = known.life();
      double own =
          life instanceof Life.FailedAt
              ? Math.log(shape / life.upper() * hazard.applyAsDouble(life.upper()))
                  - hazard.applyAsDouble(life.upper())
              : Math.log(
                  Math.exp(-hazard.applyAsDouble(life.lower()))
                      - (life instanceof Life.Outlived
                          ? 0
                          : Math.exp(-hazard.applyAsDouble(life.upper()))));
      sum += known.weight() * (own + hazard.applyAsDouble(life.entry()));
    }
    return sum;
  }

  /** Likelihood given hazard ratio: shape searched for, scale in closed form. */
  @Test
  void aGroupThatNeverFailedHasAnUpperLimit() {
    double[] failed = {1200, 3400, 4100, 6000, 7800};
    double[] outlived = {9000, 8000, 7000};
    double[] neverFailed = {6000, 7000, 8500, 9000, 9500};
    RegressionData.Builder builder = new RegressionData.Builder(GROUP);
    for (double age : failed) {
      builder.add(Life.failedAt(age), List.of(0.0), 1);
    }
    for (double age : outlived) {
      builder.add(Life.outlived(age), List.of(0.0), 1);
    }
    for (double age : neverFailed) {
      builder.add(Life.outlived(age), List.of(1.0), 1);
    }
    Separated separated = (Separated) WeibullRegression.of(builder.build());
    Separation separation = separated.effects().get(0);
    assertEquals("group", separation.covariate());
    assertEquals(Edge.ZERO, separation.towards());
    DoubleUnaryOperator highest =
        ratio ->
            highest(
                shape -> {
                  double exposure = 0;
                  double logs = 0;
                  for (double age : failed) {
                    exposure += Math.pow(age, shape);
                    logs += Math.log(age);
                  }
                  for (double age : outlived) {
                    exposure += Math.pow(age, shape);
                  }
                  for (double age : neverFailed) {
                    exposure += ratio * Math.pow(age, shape);
                  }
                  return failed.length * (Math.log(shape * failed.length / exposure) - 1)
                      + (shape - 1) * logs;
                });
    double limit = separation.limit().apply(NINETY_FIVE).orElseThrow();
    double root = 1.6448536269514722;
    assertEquals(root * root / 2, highest.applyAsDouble(0) - highest.applyAsDouble(limit), 1e-7);
    assertEquals(
        2 * (highest.applyAsDouble(0) - highest.applyAsDouble(1)),
        separated.all().statistic(),
        1e-7);
    assertTrue(limit < separation.limit().apply(Confidence.of(0.99)).orElseThrow());
  }

  private static double highest(DoubleUnaryOperator valueOfShape) {
    double low = 0.01;
    double high = 20;
    while (high - low > 1e-9) {
      double one = low + (high - low) / 3;
      double other = high - (high - low) / 3;
      if (valueOfShape.applyAsDouble(one) < valueOfShape.applyAsDouble(other)) {
        low = one;
      } else {
        high = other;
      }
    }
    return valueOfShape.applyAsDouble(low);
  }

  /** Where the group compared with never failed, the others' ratios have lower limits. */
  @Test
  void aFirstGroupThatNeverFailedHasRatiosWithoutBound() {
    RegressionData.Builder builder = new RegressionData.Builder(List.of("b", "c"));
    for (double age : new double[] {5000, 7000, 9000}) {
      builder.add(Life.outlived(age), List.of(0.0, 0.0), 2);
      builder.add(Life.failedBetween(0, age), List.of(1.0, 0.0), 1);
      builder.add(Life.outlived(age - 3000), List.of(1.0, 0.0), 1);
      builder.add(Life.failedAt(age), List.of(0.0, 1.0), 1);
    }
    Separated separated = (Separated) WeibullRegression.of(builder.build());
    assertEquals(
        List.of("b", "c"), separated.effects().stream().map(Separation::covariate).toList());
    for (Separation effect : separated.effects()) {
      assertEquals(Edge.INFINITY, effect.towards());
      assertTrue(effect.limit().apply(NINETY_FIVE).orElseThrow() > 0);
    }
  }

  /** Opened at a few ages and always found failed; one of the others was not. */
  @Test
  void aGroupThatOnlyFailedHasALowerLimit() {
    RegressionData.Builder builder = new RegressionData.Builder(List.of("load", "group"));
    double[] ages = {4000, 6000, 8000, 12_000};
    for (int index = 0; index < ages.length; index++) {
      double load = index % 2;
      builder.add(Life.failedBetween(0, ages[index]), List.of(load, 0.0), index + 1);
      builder.add(Life.outlived(ages[index]), List.of(load, 0.0), 4);
      builder.add(Life.failedBetween(0, ages[index]), List.of(1 - load, 1.0), 3);
    }
    Separated separated = (Separated) WeibullRegression.of(builder.build());
    assertEquals(
        List.of("group"), separated.effects().stream().map(Separation::covariate).toList());
    assertEquals(Edge.INFINITY, separated.effects().get(0).towards());
    assertTrue(separated.effects().get(0).limit().apply(NINETY_FIVE).orElseThrow() > 1);
  }

  /** Two that part lives at once, each with a limit of its own. */
  @Test
  void severalGroupsMayHaveNeverFailed() {
    RegressionData.Builder builder = new RegressionData.Builder(List.of("b", "c", "load"));
    for (double age : new double[] {5000, 7000, 9000, 11_000}) {
      builder.add(Life.failedAt(age), List.of(0.0, 0.0, age % 3), 1);
      builder.add(Life.outlived(age), List.of(0.0, 0.0, 1.0), 1);
      builder.add(Life.outlived(age), List.of(1.0, 0.0, 0.0), 1);
      builder.add(Life.outlived(age), List.of(0.0, 1.0, 2.0), 1);
    }
    Separated separated = (Separated) WeibullRegression.of(builder.build());
    assertEquals(
        List.of("b", "c"), separated.effects().stream().map(Separation::covariate).toList());
    separated.effects().forEach(effect -> assertEquals(Edge.ZERO, effect.towards()));
  }

  @Test
  void covariatesThatSayTheSameAreNamed() {
    RegressionData.Builder builder = new RegressionData.Builder(List.of("a", "b", "c", "d"));
    Random random = new Random(1);
    for (Life life : RandomLives.watchedFromNew(random)) {
      double a = random.nextInt(5);
      double b = random.nextInt(5);
      builder.add(life, List.of(a, b, random.nextDouble(), 3 - 2 * a), 1);
    }
    assertEquals(new Collinear(List.of("a", "d")), WeibullRegression.of(builder.build()));
    RegressionData.Builder constant = new RegressionData.Builder(GROUP);
    constant.add(Life.failedAt(5), List.of(7.0), 1).add(Life.outlived(9), List.of(7.0), 1);
    assertEquals(new Collinear(GROUP), WeibullRegression.of(constant.build()));
  }

  @Test
  void withoutAFailureThereIsNothingToCompare() {
    RegressionData.Builder builder = new RegressionData.Builder(GROUP);
    builder.add(Life.outlived(5), List.of(0.0), 1).add(Life.outlived(9), List.of(1.0), 1);
    assertEquals(Reason.NO_FAILURE, reason(builder));
  }

  /** Each group fails at an age of its own, which is its greatest: the shape grows for ever. */
  @Test
  void eachGroupAtOneAge() {
    RegressionData.Builder builder = new RegressionData.Builder(GROUP);
    builder.add(Life.failedAt(500), List.of(0.0), 3).add(Life.outlived(300), List.of(0.0), 1);
    builder.add(Life.failedAt(900), List.of(1.0), 2).add(Life.outlived(800), List.of(1.0), 1);
    assertEquals(Reason.ALL_AT_ONE_AGE, reason(builder));
  }

  /** Each group was opened at one age: any shape explains the shares. */
  @Test
  void eachGroupInspectedAtOneAge() {
    RegressionData.Builder builder = new RegressionData.Builder(GROUP);
    builder.add(Life.failedBetween(0, 400), List.of(0.0), 3);
    builder.add(Life.outlived(400), List.of(0.0), 5);
    builder.add(Life.failedBetween(0, 900), List.of(1.0), 3);
    builder.add(Life.outlived(900), List.of(1.0), 5);
    assertEquals(Reason.ONE_INSPECTION_AGE, reason(builder));
  }

  /** In either group, more of the younger had failed. */
  @Test
  void aShapeThatFallsToNothing() {
    RegressionData.Builder builder = new RegressionData.Builder(GROUP);
    for (double group : new double[] {0, 1}) {
      builder.add(Life.failedBetween(0, 400), List.of(group), 5);
      builder.add(Life.outlived(400), List.of(group), 3);
      builder.add(Life.failedBetween(0, 900), List.of(group), 3);
      builder.add(Life.outlived(900), List.of(group), 5 + group);
    }
    assertEquals(Reason.NO_RISE_WITH_AGE, reason(builder));
  }

  /** Taken together the older failed less often; within groups more often. */
  @Test
  void groupsMayRiseWithAgeWhereTheWholeDoesNot() {
    RegressionData.Builder builder = new RegressionData.Builder(GROUP);
    builder.add(Life.failedBetween(0, 400), List.of(0.0), 80);
    builder.add(Life.outlived(400), List.of(0.0), 20);
    builder.add(Life.failedBetween(0, 500), List.of(0.0), 9);
    builder.add(Life.outlived(500), List.of(0.0), 1);
    builder.add(Life.failedBetween(0, 800), List.of(1.0), 1);
    builder.add(Life.outlived(800), List.of(1.0), 9);
    builder.add(Life.failedBetween(0, 900), List.of(1.0), 20);
    builder.add(Life.outlived(900), List.of(1.0), 80);
    assertTrue(LifeFit.of(LifeFamily.WEIBULL, builder.build().pooled()).fit().isEmpty());
    WeibullRegression regression = WeibullRegression.of(builder.build()).regression().orElseThrow();
    assertTrue(regression.estimate(RegressionQuantity.hazardRatio("group")) < 1);
  }

  @Test
  void whatIsNoCovariateIsRefused() {
    RegressionData.Builder builder = new RegressionData.Builder(GROUP);
    Life life = Life.failedAt(5);
    assertThrows(IllegalArgumentException.class, () -> builder.add(life, List.of(), 1));
    assertThrows(IllegalArgumentException.class, () -> builder.add(life, List.of(Double.NaN), 1));
    assertThrows(
        IllegalArgumentException.class, () -> new RegressionData.Builder(List.of("a", "a")));
    WeibullRegression regression =
        RandomCovariates.regression(RandomCovariates.watchedFromNew(new Random(1)));
    assertThrows(IllegalArgumentException.class, () -> regression.coefficient("lead"));
    assertThrows(IllegalArgumentException.class, () -> regression.test(List.of()));
  }

  private static Reason reason(RegressionData.Builder builder) {
    return ((WithoutMaximum) WeibullRegression.of(builder.build())).none().reason();
  }
}
