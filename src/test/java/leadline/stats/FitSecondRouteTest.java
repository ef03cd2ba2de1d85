package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.WeibullDistribution;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Fits computed again in a way that shares nothing with the first: the likelihood as densities and
 * differences of distribution functions of the library, and limits of a quantity as its least and
 * greatest value on the edge of the likelihood region, walked all the way round. Source: Meeker and
 * Escobar 1998, Statistical Methods for Reliability Data, sections 7.2 and 8.3.
 */
@Tag("long")
class FitSecondRouteTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);
  private static final double FALL = 3.841458820694124 / 2;
  private static final int DIRECTIONS = 1500;

  static Stream<Arguments> cases() {
    return Stream.of(1L, 2L, 3L, 4L).map(Arguments::of);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void theLikelihoodIsThatOfTheLibrarysDistributions(long seed) {
    List<Life> lives = RandomLives.someWithDelayedEntry(new Random(seed));
    LifeFit weibull = fit(LifeFamily.WEIBULL, lives);
    assertEquals(
        weibull(lives, weibull.mu(), Math.log(weibull.sigma())), weibull.logLikelihood(), 1e-8);
    LifeFit lognormal = fit(LifeFamily.LOGNORMAL, lives);
    assertEquals(
        lognormal(lives, lognormal.mu(), Math.log(lognormal.sigma())),
        lognormal.logLikelihood(),
        1e-8);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void profileLimitsAreTheExtremesOfTheLikelihoodRegion(long seed) {
    List<Life> lives = RandomLives.someWithDelayedEntry(new Random(seed));
    LifeFit fit = fit(LifeFamily.WEIBULL, lives);
    assertExtremes(fit, lives, LifeQuantity.shape(), (mu, logSigma) -> Math.exp(-logSigma));
    assertExtremes(fit, lives, LifeQuantity.scale(), (mu, logSigma) -> Math.exp(mu));
    assertExtremes(
        fit,
        lives,
        LifeQuantity.quantile(0.1),
        (mu, logSigma) -> Math.exp(mu + Math.log(-Math.log(0.9)) * Math.exp(logSigma)));
    assertExtremes(
        fit,
        lives,
        LifeQuantity.mean(),
        (mu, logSigma) -> Math.exp(mu) * Gamma.gamma(1 + Math.exp(logSigma)));
    assertExtremes(
        fit,
        lives,
        LifeQuantity.survivalAt(7000),
        (mu, logSigma) -> Math.exp(-hazard(7000, mu, logSigma)));
    assertExtremes(
        fit,
        lives,
        LifeQuantity.failureWithin(2000, 7000),
        (mu, logSigma) -> 1 - Math.exp(hazard(7000, mu, logSigma) - hazard(9000, mu, logSigma)));
  }

  private static void assertExtremes(
      LifeFit fit, List<Life> lives, LifeQuantity quantity, DoubleBinaryOperator value) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    double height = fit.logLikelihood() - FALL;
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      double angle = 2 * Math.PI * direction / DIRECTIONS;
      double mu = Math.cos(angle) * fit.standardErrorOfMu();
      double logSigma = Math.sin(angle) * fit.standardErrorOfLogSigma();
      double inside = 0;
      double outside = 20;
      for (int halving = 0; halving < 50; halving++) {
        double middle = (inside + outside) / 2;
        double there =
            weibull(lives, fit.mu() + middle * mu, Math.log(fit.sigma()) + middle * logSigma);
        if (there >= height) {
          inside = middle;
        } else {
          outside = middle;
        }
      }
      double edge =
          value.applyAsDouble(fit.mu() + inside * mu, Math.log(fit.sigma()) + inside * logSigma);
      least = Math.min(least, edge);
      greatest = Math.max(greatest, edge);
    }
    Limits limits = fit.profileLimits(quantity, NINETY_FIVE);
    assertEquals(1, limits.lower() / least, 1e-4);
    assertEquals(1, limits.upper() / greatest, 1e-4);
    assertTrue(limits.lower() <= least * (1 + 1e-9) && limits.upper() >= greatest * (1 - 1e-9));
  }

  private static double hazard(double age, double mu, double logSigma) {
    return Math.exp((Math.log(age) - mu) * Math.exp(-logSigma));
  }

  private static double weibull(List<Life> lives, double mu, double logSigma) {
    var distribution = new WeibullDistribution(Math.exp(-logSigma), Math.exp(mu));
    return logLikelihood(lives, distribution::density, age -> Math.exp(-hazard(age, mu, logSigma)));
  }

  private static double lognormal(List<Life> lives, double mu, double logSigma) {
    var distribution = new LogNormalDistribution(mu, Math.exp(logSigma));
    return logLikelihood(
        lives, distribution::density, age -> 1 - distribution.cumulativeProbability(age));
  }

  private interface OfAge {
    double at(double age);
  }

  private static double logLikelihood(List<Life> lives, OfAge density, OfAge survival) {
    double sum = 0;
    for (Life life : lives) {
      double likelihood =
          life instanceof Life.FailedAt
              ? density.at(life.upper())
              : survival.at(life.lower())
                  - (life instanceof Life.Outlived ? 0 : survival.at(life.upper()));
      sum += Math.log(likelihood / survival.at(life.entry()));
    }
    return sum;
  }

  private static LifeFit fit(LifeFamily family, List<Life> lives) {
    return LifeFit.of(family, LifeData.of(lives)).fit().orElseThrow();
  }
}
