package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Source of the laws: age has no unit, a weight is a count, and an exact age is an interval of no
 * width.
 */
class LifeFitLawsTest {

  private static final List<LifeQuantity> AGES =
      List.of(
          LifeQuantity.scale(),
          LifeQuantity.quantile(0.05),
          LifeQuantity.quantile(0.1),
          LifeQuantity.quantile(0.5),
          LifeQuantity.mean());
  private static final List<LifeQuantity> RATIOS =
      List.of(LifeQuantity.shape(), LifeQuantity.sigma());

  static Stream<Arguments> cases() {
    return Stream.of(LifeFamily.values())
        .flatMap(
            family -> Stream.of(1L, 2L, 3L, 4L, 5L, 6L).map(seed -> Arguments.of(family, seed)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void hoursMultipliedMultiplyAgesAndNothingElse(LifeFamily family, long seed) {
    double factor = 3.7;
    List<Life> lives = RandomLives.someWithDelayedEntry(new Random(seed));
    LifeFit fit = fit(family, lives);
    LifeFit multiplied =
        fit(family, lives.stream().map(life -> RandomLives.scaled(life, factor)).toList());
    AGES.forEach(age -> assertAlike(fit, multiplied, age, factor));
    RATIOS.forEach(ratio -> assertAlike(fit, multiplied, ratio, 1));
    double exact = lives.stream().filter(life -> life instanceof Life.FailedAt).count();
    assertEquals(fit.logLikelihood(), multiplied.logLikelihood() + exact * Math.log(factor), 1e-8);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void splittingAWeightChangesNothing(LifeFamily family, long seed) {
    Random random = new Random(seed);
    LifeData.Builder whole = new LifeData.Builder();
    LifeData.Builder split = new LifeData.Builder();
    for (Life life : RandomLives.someWithDelayedEntry(random)) {
      int weight = 2 + random.nextInt(5);
      int part = 1 + random.nextInt(weight - 1);
      whole.add(life, weight);
      split.add(life, part);
      split.add(life, weight - part);
    }
    assertSame(fit(family, whole.build()), fit(family, split.build()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theOrderOfRowsChangesNothing(LifeFamily family, long seed) {
    Random random = new Random(seed);
    List<Life> lives = new ArrayList<>(RandomLives.someWithDelayedEntry(random));
    LifeFit fit = fit(family, lives);
    Collections.shuffle(lives, random);
    assertSame(fit, fit(family, lives));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void entryAtNoAgeIsNoEntry(LifeFamily family, long seed) {
    List<Life> lives = RandomLives.watchedFromNew(new Random(seed));
    assertSame(
        fit(family, lives), fit(family, lives.stream().map(life -> life.enteredAt(0)).toList()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void anIntervalShrinkingToAPointTendsToTheExactAge(LifeFamily family, long seed) {
    List<Life> lives =
        RandomLives.someWithDelayedEntry(new Random(seed)).stream()
            .filter(life -> !(life instanceof Life.FailedBetween))
            .toList();
    LifeFit exact = fit(family, lives);
    for (double width : new double[] {1e-2, 1e-4, 1e-6, 1e-8}) {
      LifeFit narrow =
          fit(family, lives.stream().map(life -> RandomLives.widened(life, width)).toList());
      double tolerance = Math.max(1e-9, width);
      assertEquals(1, narrow.sigma() / exact.sigma(), tolerance);
      assertEquals(exact.mu(), narrow.mu(), tolerance);
      assertEquals(exact.standardErrorOfMu(), narrow.standardErrorOfMu(), tolerance);
      assertEquals(
          1,
          narrow.profileLimits(LifeQuantity.quantile(0.1), Confidence.of(0.95)).lower()
              / exact.profileLimits(LifeQuantity.quantile(0.1), Confidence.of(0.95)).lower(),
          tolerance);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void limitsContainTheEstimateAndWidenWithConfidence(LifeFamily family, long seed) {
    LifeFit fit = fit(family, RandomLives.someWithDelayedEntry(new Random(seed)));
    List<LifeQuantity> all = new ArrayList<>(AGES);
    all.addAll(RATIOS);
    all.add(LifeQuantity.survivalAt(7000));
    all.add(LifeQuantity.failureWithin(2000, 7000));
    for (LifeQuantity quantity : all) {
      double estimate = fit.estimate(quantity);
      Limits lastProfile = new Limits(estimate, estimate);
      Limits lastWald = new Limits(estimate, estimate);
      for (double level : new double[] {0.5, 0.8, 0.9, 0.95, 0.99}) {
        Limits profile = fit.profileLimits(quantity, Confidence.of(level));
        Limits wald = fit.waldLimits(quantity, Confidence.of(level));
        assertEncloses(profile, lastProfile);
        assertEncloses(wald, lastWald);
        lastProfile = profile;
        lastWald = wald;
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theSlopeAtTheFitIsNone(LifeFamily family, long seed) {
    LifeFit fit = fit(family, RandomLives.someWithDelayedEntry(new Random(seed)));
    assertEquals(0, fit.slopeByMu() * fit.standardErrorOfMu(), 1e-8);
    assertEquals(0, fit.slopeByLogSigma() * fit.standardErrorOfLogSigma(), 1e-8);
  }

  private static void assertEncloses(Limits outer, Limits inner) {
    assertTrue(
        outer.lower() < inner.lower() && outer.upper() > inner.upper(), outer + " in " + inner);
  }

  private static void assertAlike(
      LifeFit one, LifeFit other, LifeQuantity quantity, double factor) {
    Confidence confidence = Confidence.of(0.9);
    assertEquals(1, factor * one.estimate(quantity) / other.estimate(quantity), 1e-8);
    Limits profile = one.profileLimits(quantity, confidence);
    Limits otherProfile = other.profileLimits(quantity, confidence);
    assertEquals(1, factor * profile.lower() / otherProfile.lower(), 1e-8);
    assertEquals(1, factor * profile.upper() / otherProfile.upper(), 1e-8);
    Limits wald = one.waldLimits(quantity, confidence);
    assertEquals(1, factor * wald.lower() / other.waldLimits(quantity, confidence).lower(), 1e-8);
  }

  private static void assertSame(LifeFit one, LifeFit other) {
    assertEquals(one.mu(), other.mu());
    assertEquals(one.sigma(), other.sigma());
    assertEquals(one.logLikelihood(), other.logLikelihood());
    assertEquals(one.covarianceOfMuAndLogSigma(), other.covarianceOfMuAndLogSigma());
  }

  private static LifeFit fit(LifeFamily family, List<Life> lives) {
    return fit(family, LifeData.of(lives));
  }

  private static LifeFit fit(LifeFamily family, LifeData data) {
    return LifeFit.of(family, data).fit().orElseThrow();
  }
}
