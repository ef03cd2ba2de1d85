package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReplacementTest {

  private static final ReplacementCosts ONE_TO_FIVE = new ReplacementCosts(1, 5);

  /** Source: Barlow and Proschan's model, computed apart: cost per 10,000 h. */
  @Test
  void aPartThatWearsIsRenewedAtHalfItsLife() {
    AgeReplacement plan = new AgeReplacement(new AgeingLife.Weibull(3, 10_000), ONE_TO_FIVE);
    double age = plan.optimalAge().orElseThrow();
    assertEquals(5026, age, 0.5);
    assertEquals(3.03, 1e4 * plan.costRateAt(age), 5e-3);
    assertEquals(3.66, 1e4 * plan.costRateAt(8000), 5e-3);
    assertEquals(5.60, 1e4 * plan.costRateUponFailure(), 5e-3);
  }

  /**
   * Source: Barlow and Proschan 1965: renewal of what does not wear, or saves nothing, is waste.
   */
  @ParameterizedTest
  @CsvSource({"1, 1, 5", "0.7, 1, 5", "3, 5, 5", "3, 5, 1", "1.0001, 1, 1.001"})
  void waitingForFailureIsBest(double shape, double preventive, double failure) {
    AgeingLife life = new AgeingLife.Weibull(shape, 1000);
    AgeReplacement plan = new AgeReplacement(life, new ReplacementCosts(preventive, failure));
    assertEquals(OptionalDouble.empty(), plan.optimalAge());
    assertEquals(failure / life.mean(), plan.optimalCostRate());
    assertTrue(new BlockReplacement(life, plan.costs()).optimum().isEmpty());
  }

  /** Source: the definition of a minimum, over a fine grid of ages. */
  @ParameterizedTest
  @CsvSource({
    "1.05, 1, 20",
    "1.5, 1, 5",
    "2, 1, 1.3",
    "3, 1, 1000000",
    "8, 1, 3",
    "2.5, 1500, 18000"
  })
  void noOtherAgeCostsLessUnderWeibull(double shape, double preventive, double failure) {
    requireMinimum(
        new AgeReplacement(
            new AgeingLife.Weibull(shape, 400), new ReplacementCosts(preventive, failure)));
  }

  /** Source: as above; a lognormal hazard falls again, so there may be no optimum. */
  @ParameterizedTest
  @CsvSource({"0.05, 1, 5", "0.3, 1, 5", "0.5, 1, 20", "1, 1, 50", "1, 1, 3", "2, 1, 5"})
  void noOtherAgeCostsLessUnderLognormal(double sigma, double preventive, double failure) {
    requireMinimum(
        new AgeReplacement(
            new AgeingLife.Lognormal(6, sigma), new ReplacementCosts(preventive, failure)));
  }

  private static void requireMinimum(AgeReplacement plan) {
    double best = plan.optimalCostRate();
    assertTrue(best <= plan.costRateUponFailure());
    for (double factor = 1e-3; factor < 1e3; factor *= 1.01) {
      double other = plan.costRateAt(factor * plan.life().mean());
      assertTrue(best <= other * (1 + 1e-12), best + " against " + other);
    }
  }

  /** Source: of lives longer than an age t, the mean up to it is the integral of survival. */
  @ParameterizedTest
  @CsvSource({"0.2", "0.7", "1", "1.6", "4"})
  void theMeanUpToAnAgeIsTheAreaUnderSurvival(double times) {
    for (AgeingLife life :
        new AgeingLife[] {new AgeingLife.Weibull(1.7, 900), new AgeingLife.Lognormal(6.5, 0.6)}) {
      double age = times * life.mean();
      int steps = 20_000;
      double area = 0;
      for (int step = 0; step < steps; step++) {
        area += life.survivalBeyond((step + 0.5) * age / steps) * age / steps;
      }
      assertEquals(area, life.meanUpTo(age), 1e-7 * area);
      assertEquals(life.mean(), life.meanUpTo(1e9 * life.mean()), 1e-9 * life.mean());
    }
  }

  /**
   * Source: Cox 1962, Renewal Theory, section 4.3: with Erlang lives of two stages of rate 1, M(t)
   * is t/2 - 1/4 + exp(-2 t)/4.
   */
  @Test
  void theRenewalFunctionOfErlangLives() {
    RenewalFunction failures = new RenewalFunction(age -> 1 - (1 + age) * Math.exp(-age), 8, 2000);
    for (int index = 1; index <= 2000; index++) {
      double time = failures.time(index);
      double exact = time / 2 - 0.25 + Math.exp(-2 * time) / 4;
      assertEquals(exact, failures.at(index), 1e-5 * (exact + 0.01));
    }
  }

  /**
   * Source: Barlow and Proschan 1965, section 4.2: where failures are rare before the optimum,
   * block renewal costs little more than renewal at an age, and never less.
   */
  @ParameterizedTest
  @CsvSource({"2, 10", "3, 5", "5, 10", "4, 100"})
  void blockRenewalCostsLittleMoreThanRenewalAtAnAge(double shape, double failure) {
    AgeingLife life = new AgeingLife.Weibull(shape, 10_000);
    ReplacementCosts costs = new ReplacementCosts(1, failure);
    BlockReplacement.Plan block = new BlockReplacement(life, costs).optimum().orElseThrow();
    double age = new AgeReplacement(life, costs).optimalCostRate();
    assertTrue(age <= block.costRate() && block.costRate() <= 1.2 * age, age + " " + block);
  }

  /** Source: the model: costs and times scale. */
  @Test
  void timesScale() {
    AgeReplacement hours = new AgeReplacement(new AgeingLife.Weibull(2.5, 42_000), ONE_TO_FIVE);
    AgeReplacement days = new AgeReplacement(new AgeingLife.Weibull(2.5, 1750), ONE_TO_FIVE);
    assertEquals(hours.optimalAge().orElseThrow() / 24, days.optimalAge().orElseThrow(), 1e-8);
    assertEquals(24 * hours.optimalCostRate(), days.optimalCostRate(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "1, 0", "NaN, 1", "1, Infinity", "-1, 1"})
  void impossibleParametersAreRefused(double one, double other) {
    assertThrows(IllegalArgumentException.class, () -> new AgeingLife.Weibull(one, other));
    assertThrows(IllegalArgumentException.class, () -> new ReplacementCosts(one, other));
  }

  @ParameterizedTest
  @CsvSource({"NaN, 1", "Infinity, 1", "0, 0", "0, -1", "0, NaN", "0, Infinity"})
  void impossibleLognormalsAreRefused(double mu, double sigma) {
    assertThrows(IllegalArgumentException.class, () -> new AgeingLife.Lognormal(mu, sigma));
  }
}
