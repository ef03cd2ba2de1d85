package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KaplanMeierTest {

  private static final Confidence NINETY_FIVE = Confidence.of(0.95);

  /** Four intervals completed and four still running, in running hours. */
  private static final KaplanMeier INTERVALS =
      curve(List.of(7600., 8200., 9100., 10_400.), List.of(12_300., 9800., 6000., 2500.));

  /** Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 8.2.1.5, its data. */
  @Test
  void sixFailuresOfTwentyWithFourRemovals() {
    KaplanMeier curve =
        curve(
            List.of(10., 32., 56., 98., 122., 181.),
            DoubleStream.concat(
                    DoubleStream.of(50, 100, 125, 150), DoubleStream.generate(() -> 200).limit(10))
                .boxed()
                .toList());
    double[] expected = {.95, .90, .847, .794, .737, .670};
    assertEquals(expected.length, curve.points().size());
    for (int step = 0; step < expected.length; step++) {
      assertEquals(expected[step], curve.points().get(step).survival(), 5e-4);
    }
  }

  /**
   * Source: by hand from Kaplan and Meier 1958; Klein and Moeschberger 2003, formulas 4.5.1 and
   * 4.5.2. S is 5/6, 4/6, 3/6, 1/4; areas to 12,300 from the steps are 2225, 1725, 1125 and 475.
   */
  @Test
  void intervalsStillRunningCountAsLongAsTheyHaveRun() {
    assertEquals(OptionalDouble.of(9100), INTERVALS.median());
    RestrictedMean mean = INTERVALS.restrictedMean(12_300).orElseThrow();
    assertEquals(9825, mean.mean(), 1e-9);
    double variance = 2225. * 2225 / 30 + 1725. * 1725 / 20 + 1125. * 1125 / 12 + 475. * 475 / 2;
    assertEquals(Math.sqrt(variance), mean.standardError(), 1e-9);
    assertEquals(9825 - 1.959964 * Math.sqrt(variance), mean.limits(NINETY_FIVE).lower(), 1e-3);
    assertEquals(9825 + 1.959964 * Math.sqrt(variance), mean.limits(NINETY_FIVE).upper(), 1e-3);
  }

  /** Source: total time over events, 65,900 h over 4, right only if the hazard were constant. */
  @Test
  void theMeanIsNotTotalTimeOverIntervalsCompleted() {
    assertEquals(16_475, new PoissonRate(4, 65_900).meanTime());
    assertTrue(INTERVALS.restrictedMean(12_300).orElseThrow().limits(NINETY_FIVE).upper() < 16_475);
  }

  /** Source: Klein and Moeschberger 2003, section 4.5: beyond the largest time S is undefined. */
  @Test
  void whatNobodyReachedIsNotKnownSoFar() {
    assertEquals(OptionalDouble.of(0.25), INTERVALS.survivalAt(12_300));
    assertEquals(OptionalDouble.empty(), INTERVALS.survivalAt(12_300.1));
    assertEquals(Optional.empty(), INTERVALS.restrictedMean(12_300.1));
    assertEquals(OptionalDouble.empty(), INTERVALS.quantile(0.76));
    assertEquals(OptionalDouble.of(10_400), INTERVALS.quantile(0.75));
    KaplanMeier nothing = KaplanMeier.of(new SurvivalTally<String>());
    assertEquals(OptionalDouble.empty(), nothing.survivalAt(0));
    assertEquals(OptionalDouble.empty(), nothing.median());
    assertEquals(OptionalDouble.empty(), nothing.medianAtMidpoint());
    assertEquals(Optional.empty(), nothing.restrictedMean(1));
  }

  /** Source: Kaplan and Meier 1958: once all have ended, S is 0 from there on. */
  @Test
  void onceAllHaveEndedNothingSurvivesAndNothingIsUncertain() {
    KaplanMeier curve = curve(List.of(2., 4.), List.of(1.));
    SurvivalPoint last = curve.points().get(1);
    assertEquals(0, last.survival());
    assertEquals(OptionalDouble.empty(), last.standardError());
    assertEquals(Optional.empty(), last.plainLimits(NINETY_FIVE));
    assertEquals(Optional.empty(), last.logLogLimits(NINETY_FIVE));
    assertEquals(OptionalDouble.of(0), curve.survivalAt(1e9));
    assertEquals(3, curve.restrictedMean(1e9).orElseThrow().mean(), 1e-6);
  }

  /**
   * Source: by hand: 27/33 x 11/18 = 1/2 exactly, though the product of the two doubles is
   * 0.5000000000000001.
   */
  @Test
  void roundingDoesNotMoveTheMedian() {
    SurvivalTally<String> tally = new SurvivalTally<>();
    tally.add(ObservedTime.ended(1, "ended"), 6);
    tally.add(ObservedTime.censored(1.5), 9);
    tally.add(ObservedTime.ended(2, "ended"), 7);
    tally.add(ObservedTime.ended(3, "ended"), 11);
    assertTrue(27.0 / 33 * (11.0 / 18) > 0.5);
    assertEquals(OptionalDouble.of(2), KaplanMeier.of(tally).median());
    assertEquals(OptionalDouble.of(2.5), KaplanMeier.of(tally).medianAtMidpoint());
  }

  /** Source: by hand: 10,000,000,001 of 20,000,000,000 is more than one half. */
  @Test
  void aShareBarelyAboveOneHalfIsNotOneHalf() {
    SurvivalTally<String> tally = new SurvivalTally<>();
    tally.add(ObservedTime.ended(1, "ended"), 9_999_999_999L);
    tally.add(ObservedTime.ended(2, "ended"), 1);
    tally.add(ObservedTime.censored(3), 10_000_000_000L);
    assertEquals(OptionalDouble.of(2), KaplanMeier.of(tally).median());
    assertEquals(OptionalDouble.of(2), KaplanMeier.of(tally).medianAtMidpoint());
  }

  /** Source: without censoring the curve is the share of times that are longer. */
  @ParameterizedTest
  @ValueSource(ints = {10, 20, 70, 130, 1000})
  void decilesOfEvenlySpacedTimesAreExact(int count) {
    KaplanMeier curve =
        curve(DoubleStream.iterate(1, time -> time + 1).limit(count).boxed().toList(), List.of());
    for (int tenths = 1; tenths <= 9; tenths++) {
      OptionalDouble expected = OptionalDouble.of((double) count / 10 * tenths);
      assertEquals(expected, curve.quantile(Double.parseDouble("0." + tenths)));
    }
  }

  /** Source: Kaplan and Meier 1958: those last seen at a time are at risk at it. */
  @Test
  void anEndAtTheStartCountsAndSoDoesACensoringTiedWithAnEnd() {
    KaplanMeier curve = curve(List.of(0., 5.), List.of(-0.0, 5.));
    assertEquals(List.of(4L, 2L), curve.points().stream().map(SurvivalPoint::atRisk).toList());
    assertEquals(OptionalDouble.of(0.75), curve.survivalAt(0));
    assertEquals(OptionalDouble.of(0.375), curve.survivalAt(5));
  }

  /** Source: IEEE 754: the two zeros are equal, so ends at them are tied. */
  @Test
  void endsAtEitherZeroAreOneStep() {
    SurvivalPoint only = curve(List.of(0., -0.0), List.of(5.)).points().get(0);
    assertEquals(2, only.events());
    assertEquals(3, only.atRisk());
  }

  /** Source: a mean of durations from 0 to a horizon lies between them. */
  @Test
  void limitsOfARestrictedMeanStayBetweenZeroAndTheHorizon() {
    assertEquals(new Limits(0, 12), new RestrictedMean(10, 100, 12).limits(NINETY_FIVE));
  }

  /** Source: Klein and Moeschberger 2003, section 4.6: at risk only after entry, strictly. */
  @Test
  void delayedEntriesAreAtRiskAfterTheirEntryOnly() {
    SurvivalTally<String> tally = new SurvivalTally<>();
    tally.add(ObservedTime.ended(5, "ended"), 1);
    tally.add(ObservedTime.<String>censored(9).enteredAt(5), 1);
    tally.add(ObservedTime.<String>censored(9).enteredAt(4.9), 1);
    tally.add(ObservedTime.ended(7, "ended").enteredAt(0), 1);
    assertEquals(
        List.of(3L, 3L),
        KaplanMeier.of(tally).points().stream().map(SurvivalPoint::atRisk).toList());
  }

  /** Source: Klein and Moeschberger 2003, section 4.6: an early risk set that dies out. */
  @Test
  void aRiskSetThatDiesOutLeavesNothingToSurviveLater() {
    SurvivalTally<String> tally = new SurvivalTally<>();
    tally.add(ObservedTime.ended(5, "ended"), 1);
    tally.add(ObservedTime.ended(9, "ended").enteredAt(6), 1);
    tally.add(ObservedTime.<String>censored(10).enteredAt(6), 1);
    KaplanMeier curve = KaplanMeier.of(tally);
    assertEquals(OptionalDouble.of(0), curve.survivalAt(9));
    assertEquals(OptionalDouble.empty(), curve.points().get(1).standardError());
    assertEquals(new RestrictedMean(5, 0, 20), curve.restrictedMean(20).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN})
  void timesBeforeTheStartAreRefused(double time) {
    assertThrows(IllegalArgumentException.class, () -> INTERVALS.survivalAt(time));
    assertThrows(IllegalArgumentException.class, () -> INTERVALS.restrictedMean(time));
    assertThrows(IllegalArgumentException.class, () -> ObservedTime.censored(time));
    assertThrows(IllegalArgumentException.class, () -> ObservedTime.ended(time, "ended"));
    assertThrows(IllegalArgumentException.class, () -> ObservedTime.censored(5).enteredAt(time));
  }

  @Test
  void impossibleHorizonsSharesAndEntriesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> INTERVALS.restrictedMean(0));
    assertThrows(
        IllegalArgumentException.class, () -> INTERVALS.restrictedMean(Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> INTERVALS.quantile(0));
    assertThrows(IllegalArgumentException.class, () -> INTERVALS.quantile(1));
    assertThrows(IllegalArgumentException.class, () -> ObservedTime.censored(5).enteredAt(5));
    assertThrows(
        IllegalArgumentException.class, () -> ObservedTime.censored(Double.POSITIVE_INFINITY));
  }

  private static KaplanMeier curve(List<Double> ended, List<Double> censored) {
    SurvivalTally<String> tally = new SurvivalTally<>();
    ended.forEach(time -> tally.add(ObservedTime.ended(time, "ended"), 1));
    censored.forEach(time -> tally.add(ObservedTime.censored(time), 1));
    return KaplanMeier.of(tally);
  }
}
