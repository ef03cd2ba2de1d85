package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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
    return Stream.of(LifeDistribution.values())
        .flatMap(
            family -> Stream.of(1L, 2L, 3L, 4L, 5L, 6L).map(seed -> Arguments.of(family, seed)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void hoursMultipliedMultiplyAgesAndNothingElse(LifeDistribution family, long seed) {
    double factor = 3.7;
    List<Life> lives = RandomLives.someWithDelayedEntry(new Random(seed));
    FittedLife fit = fit(family, lives);
    FittedLife multiplied =
        fit(family, lives.stream().map(life -> RandomLives.scaled(life, factor)).toList());
    AGES.forEach(age -> assertAlike(fit, multiplied, age, factor));
    RATIOS.forEach(ratio -> assertAlike(fit, multiplied, ratio, 1));
    double exact = lives.stream().filter(life -> life instanceof Life.FailedAt).count();
    assertEquals(fit.logLikelihood(), multiplied.logLikelihood() + exact * Math.log(factor), 1e-8);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void splittingAWeightChangesNothing(LifeDistribution family, long seed) {
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
  void theOrderOfRowsChangesNothing(LifeDistribution family, long seed) {
    Random random = new Random(seed);
    List<Life> lives = new ArrayList<>(RandomLives.someWithDelayedEntry(random));
    FittedLife fit = fit(family, lives);
    Collections.shuffle(lives, random);
    assertSame(fit, fit(family, lives));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void entryAtNoAgeIsNoEntry(LifeDistribution family, long seed) {
    List<Life> lives = RandomLives.watchedFromNew(new Random(seed));
    assertSame(
        fit(family, lives), fit(family, lives.stream().map(life -> life.enteredAt(0)).toList()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void anIntervalShrinkingToAPointTendsToTheExactAge(LifeDistribution family, long seed) {
    List<Life> lives =
        RandomLives.someWithDelayedEntry(new Random(seed)).stream()
            .filter(life -> !(life instanceof Life.FailedBetween))
            .toList();
    FittedLife exact = fit(family, lives);
    for (double width : new double[] {1e-2, 1e-4, 1e-6, 1e-8}) {
      FittedLife narrow =
          fit(family, lives.stream().map(life -> RandomLives.widened(life, width)).toList());
      double tolerance = Math.max(1e-9, width);
      for (LifeQuantity quantity : List.of(LifeQuantity.shape(), LifeQuantity.scale())) {
        assertEquals(1, narrow.estimate(quantity) / exact.estimate(quantity), tolerance);
        assertEquals(
            1,
            narrow.waldLimits(quantity, Confidence.of(0.95)).lower()
                / exact.waldLimits(quantity, Confidence.of(0.95)).lower(),
            2 * tolerance);
      }
      assertEquals(
          1,
          narrow.profileLimits(LifeQuantity.quantile(0.1), Confidence.of(0.95)).lower()
              / exact.profileLimits(LifeQuantity.quantile(0.1), Confidence.of(0.95)).lower(),
          tolerance);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void limitsContainTheEstimateAndWidenWithConfidence(LifeDistribution family, long seed) {
    FittedLife fit = fit(family, RandomLives.someWithDelayedEntry(new Random(seed)));
    List<LifeQuantity> all = new ArrayList<>(AGES);
    if (family != LifeDistribution.EXPONENTIAL) {
      all.addAll(RATIOS);
    }
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

  /** Two to six lives, whose likelihood often has no lower end, or no upper. */
  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXPONENTIAL")
  void limitsOfFewLivesWithDelayedEntryWidenWithConfidence(LifeDistribution family) {
    List<LifeQuantity> all = new ArrayList<>(AGES);
    all.addAll(RATIOS);
    all.add(LifeQuantity.survivalAt(7000));
    all.add(LifeQuantity.failureWithin(2000, 7000));
    int fits = 0;
    for (long seed = 0; seed < 150; seed++) {
      Random random = new Random(seed);
      List<Life> lives = new ArrayList<>(RandomLives.someWithDelayedEntry(random));
      Collections.shuffle(lives, random);
      LifeData data = LifeData.of(lives.subList(0, 2 + random.nextInt(5)));
      Optional<? extends FittedLife> fit = family.fit(data).fit();
      fits += fit.isPresent() ? 1 : 0;
      for (LifeQuantity quantity : fit.isPresent() ? all : List.<LifeQuantity>of()) {
        double estimate = fit.orElseThrow().estimate(quantity);
        Limits last = new Limits(Math.min(estimate, Double.MAX_VALUE), estimate);
        for (double level : new double[] {0.5, 0.9, 0.99}) {
          Limits limits = fit.orElseThrow().profileLimits(quantity, Confidence.of(level));
          assertTrue(
              limits.lower() <= last.lower() * (1 + 1e-7)
                  && limits.upper() >= last.upper() * (1 - 1e-7),
              () -> limits + " within " + data.lives());
          last = limits;
        }
      }
    }
    assertTrue(fits > 80, fits + " fits");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theSlopeAtTheFitIsNone(LifeDistribution family, long seed) {
    FittedLife fit = fit(family, RandomLives.someWithDelayedEntry(new Random(seed)));
    if (fit instanceof LifeFit ofLogAge) {
      assertEquals(0, ofLogAge.slopeByMu() * ofLogAge.standardErrorOfMu(), 1e-8);
      assertEquals(0, ofLogAge.slopeByLogSigma() * ofLogAge.standardErrorOfLogSigma(), 1e-8);
    } else if (fit instanceof GammaFit gamma) {
      assertEquals(0, gamma.slopeByLogMean() * gamma.standardErrorOfLogMean(), 1e-8);
      assertEquals(0, gamma.slopeByLogShape() * gamma.standardErrorOfLogShape(), 1e-8);
    } else if (fit instanceof KnownShapeFit exponential) {
      assertEquals(0, exponential.slopeByLogScale() * exponential.standardErrorOfLogScale(), 1e-7);
    }
  }

  /** Source of the law: Akaike 1974. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void theBestByAicComesFirst(long seed) {
    List<FittedLife> fits =
        FittedLife.byAic(LifeData.of(RandomLives.someWithDelayedEntry(new Random(seed))));
    assertEquals(
        EnumSet.allOf(LifeDistribution.class),
        fits.stream().map(FittedLife::distribution).collect(Collectors.toSet()));
    for (int rank = 1; rank < fits.size(); rank++) {
      assertTrue(fits.get(rank - 1).aic() <= fits.get(rank).aic());
    }
  }

  /** Source of the law: all are one curve read in several ways. */
  @ParameterizedTest
  @MethodSource("cases")
  void survivalQuantilesAndHazardAgree(LifeDistribution family, long seed) {
    FittedLife fit = fit(family, RandomLives.someWithDelayedEntry(new Random(seed)));
    double median = fit.estimate(LifeQuantity.quantile(0.5));
    assertEquals(0.5, fit.survivalBeyond(median), 1e-10);
    assertEquals(0.5, fit.failureBy(median), 1e-10);
    assertEquals(fit.survivalBeyond(7000), fit.estimate(LifeQuantity.survivalAt(7000)), 1e-12);
    assertEquals(
        1 - fit.survivalBeyond(9000) / fit.survivalBeyond(7000),
        fit.estimate(LifeQuantity.failureWithin(2000, 7000)),
        1e-12);
  }

  private static void assertEncloses(Limits outer, Limits inner) {
    assertTrue(
        outer.lower() < inner.lower() && outer.upper() > inner.upper(), outer + " in " + inner);
  }

  private static void assertAlike(
      FittedLife one, FittedLife other, LifeQuantity quantity, double factor) {
    Confidence confidence = Confidence.of(0.9);
    assertEquals(1, factor * one.estimate(quantity) / other.estimate(quantity), 1e-8);
    Limits profile = one.profileLimits(quantity, confidence);
    Limits otherProfile = other.profileLimits(quantity, confidence);
    assertEquals(1, factor * profile.lower() / otherProfile.lower(), 1e-8);
    assertEquals(1, factor * profile.upper() / otherProfile.upper(), 1e-8);
    Limits wald = one.waldLimits(quantity, confidence);
    assertEquals(1, factor * wald.lower() / other.waldLimits(quantity, confidence).lower(), 1e-8);
  }

  private static void assertSame(FittedLife one, FittedLife other) {
    assertEquals(one.estimate(LifeQuantity.shape()), other.estimate(LifeQuantity.shape()));
    assertEquals(one.estimate(LifeQuantity.scale()), other.estimate(LifeQuantity.scale()));
    assertEquals(one.logLikelihood(), other.logLikelihood());
    assertEquals(
        one.waldLimits(LifeQuantity.scale(), Confidence.of(0.9)),
        other.waldLimits(LifeQuantity.scale(), Confidence.of(0.9)));
  }

  private static FittedLife fit(LifeDistribution family, List<Life> lives) {
    return fit(family, LifeData.of(lives));
  }

  private static FittedLife fit(LifeDistribution family, LifeData data) {
    return family.fit(data).fit().orElseThrow();
  }
}
