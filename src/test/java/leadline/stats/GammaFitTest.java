package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FitOutcome.Reason;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GammaFitTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  /** Every kind of censoring, delayed entry and weights, invented; ages in hours. */
  private static final LifeData EVERY_KIND =
      new LifeData.Builder()
          .add(Life.failedAt(2600), 1)
          .add(Life.failedAt(4100).enteredAt(1200), 1)
          .add(Life.failedAt(5200), 2)
          .add(Life.failedAt(6900).enteredAt(3000), 1)
          .add(Life.failedAt(9800), 1)
          .add(Life.failedAt(12_400), 1)
          .add(Life.failedBetween(0, 4000), 1)
          .add(Life.failedBetween(4000, 8000), 3)
          .add(Life.failedBetween(4000, 8000).enteredAt(2500), 1)
          .add(Life.failedBetween(8000, 12_000), 2)
          .add(Life.outlived(8000), 3)
          .add(Life.outlived(6000), 2)
          .add(Life.outlived(12_000).enteredAt(5000), 2)
          .add(Life.outlived(16_000), 1)
          .add(Life.outlived(3000), 2)
          .build();

  /**
   * Source: Lieblein and Zelen 1956, J. Res. NBS 57:273, as in Lawless 1982; the estimates from
   * memory of Lawless 2003, Statistical Models and Methods for Lifetime Data, chapter 5, and to
   * more digits by R 4.2.2, optimize over dgamma.
   */
  @Test
  void ballBearings() {
    GammaFit fit =
        fit(
            LifeData.of(
                DoubleStream.of(
                        17.88, 28.92, 33, 41.52, 42.12, 45.6, 48.48, 51.84, 51.96, 54.12, 55.56,
                        67.8, 68.64, 68.64, 68.88, 84.12, 93.12, 98.64, 105.12, 105.84, 127.92,
                        128.04, 173.4)
                    .mapToObj(Life::failedAt)
                    .toList()));
    assertEquals(4.02, fit.shape(), 0.01);
    assertEquals(17.9, fit.scale(), 0.05);
    assertEquals(4.025414618, fit.shape(), 1e-6);
    assertEquals(17.94208912, fit.scale(), 5e-6);
    assertEquals(-113.029281372, fit.logLikelihood(), 1e-8);
    assertEquals(1661.16 / 23, fit.mean(), 1e-8);
  }

  /**
   * Source: R 4.2.2: dgamma and pgamma maximised by optim (BFGS, then Nelder and Mead), information
   * by Richardson differences, limits as extremes over the edge of the likelihood region, walked
   * round with uniroot and refined with optimize.
   */
  @Test
  void livesOfEveryKind() {
    GammaFit fit = fit(EVERY_KIND);
    assertEquals(-83.1448037507, fit.logLikelihood(), 1e-9);
    assertEquals(0.38954508, fit.standardErrorOfLogShape(), 1e-6);
    assertEquals(0.14725221, fit.standardErrorOfLogMean(), 1e-6);
    assertEquals(-0.015765788, fit.covarianceOfLogShapeAndLogMean(), 1e-6);
    assertQuantity(fit, LifeQuantity.shape(), 3.148064631, 1.355021717, 6.284695010);
    assertQuantity(fit, LifeQuantity.scale(), 2961.126501, 1363.895708, 8436.589805);
    assertQuantity(fit, LifeQuantity.mean(), 9321.817606, 7145.548396, 13429.638371);
    assertQuantity(fit, LifeQuantity.quantile(0.05), 2648.709643, 972.4952979, 4207.8079961);
    assertQuantity(fit, LifeQuantity.quantile(0.1), 3534.300674, 1655.851939, 5164.911969);
    assertQuantity(fit, LifeQuantity.quantile(0.5), 8355.532752, 6231.368687, 11440.223304);
    assertQuantity(fit, LifeQuantity.survivalAt(8000), 0.5292033424, 0.3477799742, 0.7059275719);
    assertQuantity(
        fit, LifeQuantity.failureWithin(2000, 8000), 0.2881241125, 0.1553231024, 0.4557467863);
  }

  private static void assertQuantity(
      GammaFit fit, LifeQuantity quantity, double estimate, double lower, double upper) {
    assertEquals(1, fit.estimate(quantity) / estimate, 1e-7);
    assertEquals(1, fit.profileLimits(quantity, NINETY_FIVE).lower() / lower, 1e-6);
    assertEquals(1, fit.profileLimits(quantity, NINETY_FIVE).upper() / upper, 1e-6);
  }

  /** Source of the law: limits by the normal distribution are the delta method's. */
  @Test
  void waldLimitsAreThoseOfTheDeltaMethod() {
    GammaFit fit = fit(EVERY_KIND);
    double step = 1e-5;
    double z = 1.959963984540054;
    for (double share : new double[] {0.05, 0.5}) {
      double byLogShape =
          (logQuantile(fit.shape() * Math.exp(step), fit.mean(), share)
                  - logQuantile(fit.shape() * Math.exp(-step), fit.mean(), share))
              / (2 * step);
      double variance =
          Math.pow(byLogShape * fit.standardErrorOfLogShape(), 2)
              + Math.pow(fit.standardErrorOfLogMean(), 2)
              + 2 * byLogShape * fit.covarianceOfLogShapeAndLogMean();
      Limits limits = fit.waldLimits(LifeQuantity.quantile(share), NINETY_FIVE);
      double ratio = Math.exp(z * Math.sqrt(variance));
      double estimate = fit.estimate(LifeQuantity.quantile(share));
      assertEquals(1, limits.upper() / (estimate * ratio), 1e-6);
      assertEquals(1, limits.lower() / (estimate / ratio), 1e-6);
    }
  }

  private static double logQuantile(double shape, double mean, double share) {
    return Math.log(
        new GammaDistribution(shape, mean / shape, 1e-12).inverseCumulativeProbability(share));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theLikelihoodIsThatOfTheLibraryAndNoneNearbyIsHigher(long seed) {
    List<Life> lives = RandomLives.someWithDelayedEntry(new Random(seed));
    GammaFit fit = fit(LifeData.of(lives));
    assertEquals(logLikelihood(lives, fit.shape(), fit.scale()), fit.logLikelihood(), 1e-8);
    for (double shape = fit.shape() / 8; shape < 8 * fit.shape(); shape *= 1.3) {
      for (double mean = fit.mean() / 8; mean < 8 * fit.mean(); mean *= 1.1) {
        double there = logLikelihood(lives, shape, mean / shape);
        assertFalse(there > fit.logLikelihood() + 1e-9, shape + ", " + mean + ": " + there);
      }
    }
    assertEquals(0, fit.slopeByLogShape() * fit.standardErrorOfLogShape(), 1e-8);
    assertEquals(0, fit.slopeByLogMean() * fit.standardErrorOfLogMean(), 1e-8);
  }

  private static double logLikelihood(List<Life> lives, double shape, double scale) {
    GammaDistribution gamma = new GammaDistribution(shape, scale);
    double sum = 0;
    for (Life life : lives) {
      double likelihood =
          life instanceof Life.FailedAt
              ? gamma.density(life.upper())
              : (life instanceof Life.Outlived ? 1 : gamma.cumulativeProbability(life.upper()))
                  - gamma.cumulativeProbability(life.lower());
      sum += Math.log(likelihood / (1 - gamma.cumulativeProbability(life.entry())));
    }
    return sum;
  }

  /** Source of the law: at a shape of 1 it is the exponential distribution. */
  @Test
  void atAShapeOfOneItIsExponential() {
    KnownShapeFit exponential = KnownShapeFit.of(1, EVERY_KIND).fit().orElseThrow();
    GammaLikelihood likelihood = new GammaLikelihood(EVERY_KIND.logAges());
    double offset = (likelihood.centre() - Math.log(exponential.mean())) * GammaPlane.stretch(1);
    Expansion there = likelihood.at(1, offset);
    assertEquals(exponential.logLikelihood(), there.value(), 1e-10);
    assertEquals(0, there.byOffset(), 1e-9);
  }

  /** Two opening ages and two parameters: the fitted shares are the observed ones. */
  @Test
  void openedAtTwoAges() {
    GammaFit fit =
        fit(
            new LifeData.Builder()
                .add(Life.failedBetween(0, 8000), 6)
                .add(Life.outlived(8000), 34)
                .add(Life.failedBetween(0, 16_000), 8)
                .add(Life.outlived(16_000), 12)
                .build());
    assertEquals(34 / 40.0, fit.survivalBeyond(8000), 1e-9);
    assertEquals(8 / 20.0, fit.failureBy(16_000), 1e-9);
    assertEquals(1, fit.survivalBeyond(0));
  }

  /** All entered late and failures thin out: the hazard falls faster than that of any gamma. */
  @Test
  void aHazardFallingTooFastHasNoMaximum() {
    LifeData data =
        LifeData.of(
            List.of(
                Life.failedAt(1010).enteredAt(1000),
                Life.failedAt(1020).enteredAt(1000),
                Life.failedAt(1030).enteredAt(1000),
                Life.outlived(50_000).enteredAt(1000),
                Life.outlived(50_000).enteredAt(1000)));
    assertEquals(
        Optional.of(Reason.NO_RISE_WITH_AGE),
        GammaFit.of(data) instanceof NoFiniteMaximum<GammaFit> none
            ? Optional.of(none.reason())
            : Optional.empty());
  }

  /** Nearly alike: a large shape, near the normal distribution, has its fit and limits too. */
  @Test
  void livesNearlyAlike() {
    List<Life> lives =
        DoubleStream.of(9990, 9995, 10_000, 10_004, 10_011).mapToObj(Life::failedAt).toList();
    GammaFit fit = fit(LifeData.of(lives));
    // For large shapes log age is normal, its variance 1 / shape; the 5 squares sum to 262.
    assertEquals(10_000 * 10_000 / (262 / 5.0), fit.shape(), 0.001 * fit.shape());
    Limits limits = fit.profileLimits(LifeQuantity.quantile(0.1), NINETY_FIVE);
    assertTrue(limits.lower() > 9960 && limits.upper() < 10_000);
  }

  private static GammaFit fit(LifeData data) {
    return GammaFit.of(data).fit().orElseThrow();
  }
}
