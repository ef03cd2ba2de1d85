package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FitOutcome.Reason;
import leadline.stats.OneSidedLimit.ScaleAtMost;
import leadline.stats.OneSidedLimit.SurvivalAtLeast;
import leadline.stats.OneSidedLimit.SurvivalAtMost;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Data for which the likelihood has no highest point. Source: Rockafellar 1970, Convex Analysis,
 * theorem 27.1, applied to each by hand; of the limits, Clopper and Pearson 1934.
 */
class FitExistenceTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  static Stream<Arguments> without() {
    return Stream.of(
            Arguments.of(Reason.NO_FAILURE, List.of(Life.outlived(4000), Life.outlived(9000))),
            Arguments.of(
                Reason.NO_FAILURE,
                List.of(Life.outlived(4000).enteredAt(100), Life.outlived(9000).enteredAt(7000))),
            Arguments.of(
                Reason.NO_SURVIVAL,
                List.of(Life.failedBetween(0, 4000), Life.failedBetween(0, 9000))),
            Arguments.of(
                Reason.NO_SURVIVAL,
                List.of(
                    Life.failedBetween(2000, 4000).enteredAt(2000), Life.failedBetween(0, 9000))),
            Arguments.of(Reason.ALL_AT_ONE_AGE, List.of(Life.failedAt(500), Life.failedAt(500))),
            Arguments.of(
                Reason.ALL_AT_ONE_AGE,
                List.of(Life.failedAt(500), Life.failedAt(500), Life.outlived(300))),
            Arguments.of(Reason.ALL_AT_ONE_AGE, List.of(Life.failedBetween(4000, 8000))),
            Arguments.of(
                Reason.ALL_AT_ONE_AGE,
                List.of(Life.failedBetween(4000, 8000), Life.outlived(4000), Life.outlived(8000))),
            Arguments.of(
                Reason.ALL_AT_ONE_AGE, List.of(Life.outlived(4000), Life.failedBetween(0, 8000))),
            Arguments.of(
                Reason.ONE_INSPECTION_AGE,
                List.of(Life.failedBetween(0, 8000), Life.outlived(8000), Life.outlived(0))),
            Arguments.of(
                Reason.NO_RISE_WITH_AGE,
                List.of(
                    Life.failedBetween(0, 4000),
                    Life.outlived(4000),
                    Life.outlived(8000),
                    Life.outlived(8000),
                    Life.failedBetween(0, 8000))))
        .flatMap(
            one ->
                Stream.of(LifeDistribution.values())
                    .filter(family -> family != LifeDistribution.EXPONENTIAL)
                    .map(family -> Arguments.of(family, one.get()[0], one.get()[1])));
  }

  @ParameterizedTest
  @MethodSource("without")
  void theReasonIsGiven(LifeDistribution family, Reason reason, List<Life> lives) {
    assertEquals(Optional.of(reason), reason(family.fit(LifeData.of(lives))));
  }

  /** One failure with a survivor beyond it is enough for a maximum, though not for much more. */
  @ParameterizedTest
  @EnumSource
  void oneFailureAmongSurvivors(LifeFamily family) {
    LifeFit fit =
        LifeFit.of(
                family,
                LifeData.of(List.of(Life.failedAt(5000), Life.outlived(6000), Life.outlived(400))))
            .fit()
            .orElseThrow();
    assertEquals(0, fit.slopeByMu(), 1e-8);
    assertEquals(0, fit.slopeByLogSigma(), 1e-8);
  }

  /** With more survivors at the greater age the slope by shape at a shape of 0 is upwards. */
  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXPONENTIAL")
  void aRiseWithAgeHoweverSmallHasAMaximum(LifeDistribution family) {
    LifeData data =
        new LifeData.Builder()
            .add(Life.failedBetween(0, 4000), 100)
            .add(Life.outlived(4000), 101)
            .add(Life.failedBetween(0, 8000), 101)
            .add(Life.outlived(8000), 100)
            .build();
    FittedLife fit = family.fit(data).fit().orElseThrow();
    assertEquals(101 / 201.0, fit.estimate(LifeQuantity.survivalAt(4000)), 1e-9);
    assertEquals(100 / 201.0, fit.estimate(LifeQuantity.survivalAt(8000)), 1e-9);
    Limits shape = fit.profileLimits(LifeQuantity.shape(), NINETY_FIVE);
    assertEquals(0, shape.lower());
    assertTrue(shape.upper() > fit.estimate(LifeQuantity.shape()));
  }

  /** Failures thinning out with age after a late entry: hazard falls faster than 1 / age. */
  @Test
  void aHazardFallingFasterThanAnyWeibullHasNoMaximum() {
    LifeData data =
        LifeData.of(
            List.of(
                Life.failedAt(1010).enteredAt(1000),
                Life.failedAt(1020).enteredAt(1000),
                Life.failedAt(1030).enteredAt(1000),
                Life.outlived(50_000).enteredAt(1000),
                Life.outlived(50_000).enteredAt(1000)));
    assertEquals(
        Optional.of(Reason.NO_RISE_WITH_AGE), reason(LifeFit.of(LifeFamily.WEIBULL, data)));
  }

  /**
   * A power law from each entry fits best; the log-logistic distribution comes to it only as its
   * scale falls to 0, the lognormal as its shape does too.
   */
  @Test
  void aPowerLawFromEachEntryIsNoMaximum() {
    LifeData failed =
        LifeData.of(
            List.of(Life.failedAt(11_470).enteredAt(4001), Life.failedAt(3027).enteredAt(2250)));
    assertEquals(
        Optional.of(Reason.NO_RISE_WITH_AGE), reason(LifeFit.of(LifeFamily.LOG_LOGISTIC, failed)));
    LifeData outlived =
        LifeData.of(
            List.of(Life.failedAt(816).enteredAt(337), Life.outlived(13_959).enteredAt(10_968)));
    assertEquals(
        Optional.of(Reason.NO_RISE_WITH_AGE), reason(LifeFit.of(LifeFamily.LOGNORMAL, outlived)));
  }

  @Test
  void withoutAFailureTheShareThatOutlivesHasALowerLimit() {
    LifeData data =
        new LifeData.Builder().add(Life.outlived(8000), 10).add(Life.outlived(2000), 5).build();
    SurvivalAtLeast limit = (SurvivalAtLeast) limit(LifeFit.of(LifeFamily.WEIBULL, data));
    assertEquals(8000, limit.age());
    assertEquals(Math.pow(0.05, 0.1), limit.share(), 1e-12);
  }

  @Test
  void withoutASurvivorTheShareThatOutlivesHasAnUpperLimit() {
    LifeData data = new LifeData.Builder().add(Life.failedBetween(0, 8000), 10).build();
    SurvivalAtMost limit = (SurvivalAtMost) limit(LifeFit.of(LifeFamily.WEIBULL, data));
    assertEquals(8000, limit.age());
    assertEquals(1 - Math.pow(0.05, 0.1), limit.share(), 1e-12);
    ScaleAtMost mean = (ScaleAtMost) limit(KnownShapeFit.of(1, data));
    assertEquals(-8000 / Math.log1p(-Math.pow(0.05, 0.1)), mean.scale(), 1e-6);
  }

  @Test
  void oneInspectionAgeGivesTheBinomialLimitThere() {
    LifeData data =
        new LifeData.Builder()
            .add(Life.failedBetween(0, 2500), 7)
            .add(Life.outlived(2500), 93)
            .build();
    SurvivalAtLeast limit = (SurvivalAtLeast) limit(LifeFit.of(LifeFamily.WEIBULL, data));
    assertEquals(2500, limit.age());
    Limits binomial = new Proportion(93, 100).clopperPearson(Confidence.of(0.9));
    assertEquals(binomial.lower(), limit.share(), 1e-12);
  }

  private static <F> Optional<Reason> reason(FitOutcome<F> outcome) {
    return outcome instanceof NoFiniteMaximum<F> none
        ? Optional.of(none.reason())
        : Optional.empty();
  }

  private static <F> OneSidedLimit limit(FitOutcome<F> outcome) {
    return ((NoFiniteMaximum<F>) outcome).limits().apply(NINETY_FIVE).orElseThrow();
  }
}
