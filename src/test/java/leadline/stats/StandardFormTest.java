package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StandardFormTest {

  private static final double STEP = 1e-4;

  private interface Function {
    void at(double z, Jet jet);
  }

  /** Source of the law: derivatives are limits of difference quotients. */
  @ParameterizedTest
  @EnumSource
  void slopesAreThoseOfTheValues(LifeFamily family) {
    StandardForm form = family.standardForm();
    for (double z = -8; z < 3.5; z += 0.37) {
      assertSlopes(form::logDensity, z);
      assertSlopes(form::logSurvival, z);
      assertSlopes(
          (at, jet) -> {
            form.logSurvival(at, jet);
            jet.complement();
          },
          z);
    }
    for (double shape = 1.5; shape < 9; shape += 0.37) {
      assertSlopes(form::logMean, shape);
    }
  }

  /** Source of the law: hazard is density over survival. */
  @ParameterizedTest
  @EnumSource
  void densitySurvivalAndHazardAgree(LifeFamily family) {
    StandardForm form = family.standardForm();
    for (double z = -30; z < 4; z += 0.37) {
      Jet density = new Jet();
      Jet survival = new Jet();
      form.logDensity(z, density);
      form.logSurvival(z, survival);
      assertEquals(
          density.value - survival.value, Math.log(-survival.first), 1e-12 * z * z + 1e-13);
    }
  }

  @ParameterizedTest
  @EnumSource
  void quantilesInvertTheSurvival(LifeFamily family) {
    StandardForm form = family.standardForm();
    Jet jet = new Jet();
    for (double logSurvival : new double[] {-1e-30, -1e-9, -0.01, -0.5, -1, -5, -100, -2000}) {
      form.logSurvival(form.atLogSurvival(logSurvival), jet);
      assertEquals(1, jet.value / logSurvival, 1e-12);
    }
  }

  /**
   * Source: Abramowitz and Stegun 1964, Handbook of Mathematical Functions, table 26.2: -log10 of
   * the normal tail beyond 5, 10, 20, 50 and 100.
   */
  @ParameterizedTest
  @CsvSource({"5,6.54265", "10,23.11805", "20,88.56010", "50,544.96634", "100,2173.87154"})
  void theNormalTailGoesFarBeyondTheLeastNumber(double z, double minusLog10) {
    Jet jet = new Jet();
    LifeFamily.LOGNORMAL.standardForm().logSurvival(z, jet);
    assertEquals(minusLog10, -jet.value / Math.log(10), 6e-6);
  }

  /** Source: the library's normal distribution, where it has digits. */
  @Test
  void theNormalCentreIsThatOfTheLibrary() {
    NormalDistribution normal = new NormalDistribution();
    Jet jet = new Jet();
    for (double z = -6; z < 6; z += 0.01) {
      LifeFamily.LOGNORMAL.standardForm().logSurvival(z, jet);
      assertEquals(normal.cumulativeProbability(-z), Math.exp(jet.value), 1e-15);
    }
  }

  /** Source: Meeker and Escobar 1998, Statistical Methods for Reliability Data, chapter 4. */
  @Test
  void meansFollowTheirFormulas() {
    assertEquals(Math.sqrt(Math.PI) / 2, mean(LifeFamily.WEIBULL, 2), 1e-14);
    assertEquals(Math.exp(0.125), mean(LifeFamily.LOGNORMAL, 2), 1e-14);
    assertEquals(Math.PI / 2, mean(LifeFamily.LOG_LOGISTIC, 2), 1e-14);
  }

  private static double mean(LifeFamily family, double shape) {
    Jet jet = new Jet();
    family.standardForm().logMean(shape, jet);
    return Math.exp(jet.value);
  }

  private static void assertSlopes(Function function, double z) {
    Jet here = new Jet();
    Jet below = new Jet();
    Jet above = new Jet();
    function.at(z, here);
    function.at(z - STEP, below);
    function.at(z + STEP, above);
    double scale = 1 + Math.abs(here.value) + Math.abs(here.second);
    assertEquals((above.value - below.value) / (2 * STEP), here.first, 1e-7 * scale);
    assertEquals((above.first - below.first) / (2 * STEP), here.second, 1e-7 * scale);
  }
}
