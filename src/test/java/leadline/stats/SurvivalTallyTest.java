package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.UnaryOperator;
import leadline.stats.RandomTimes.Cause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the laws checked here: counts form a commutative monoid, and time has no unit. */
class SurvivalTallyTest {

  private static final double DOUBLED = 2;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void mergingIsAssociativeAndCommutative(long seed) {
    Random random = new Random(seed);
    var a = RandomTimes.someWithDelayedEntry(random);
    var b = RandomTimes.someWithDelayedEntry(random);
    var c = RandomTimes.someWithDelayedEntry(random);
    List<ObservedTime<Cause>> all = new ArrayList<>(a);
    all.addAll(b);
    all.addAll(c);
    Collections.shuffle(all, random);
    SurvivalTally<Cause> expected = RandomTimes.tally(all);
    assertAlike(expected, merged(merged(RandomTimes.tally(a), b), c));
    assertAlike(expected, merged(merged(RandomTimes.tally(c), b), a));
    SurvivalTally<Cause> nested = RandomTimes.tally(a);
    nested.merge(merged(RandomTimes.tally(b), c));
    assertAlike(expected, nested);
    SurvivalTally<Cause> fromNothing = new SurvivalTally<>();
    fromNothing.merge(expected);
    fromNothing.merge(new SurvivalTally<>());
    assertAlike(expected, fromNothing);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void splittingACountChangesNothing(long seed) {
    Random random = new Random(seed);
    SurvivalTally<Cause> whole = new SurvivalTally<>();
    SurvivalTally<Cause> split = new SurvivalTally<>();
    for (ObservedTime<Cause> observed : RandomTimes.someWithDelayedEntry(random)) {
      int count = 2 + random.nextInt(10);
      int part = 1 + random.nextInt(count - 1);
      whole.add(observed, count);
      split.add(observed, part);
      split.add(observed, count - part);
    }
    assertAlike(whole, split);
  }

  @Test
  void mergingLeavesTheOtherAsItIs() {
    SurvivalTally<Cause> one = RandomTimes.tally(List.of(ObservedTime.ended(1, Cause.PLANNED)));
    SurvivalTally<Cause> other = RandomTimes.tally(List.of(ObservedTime.ended(1, Cause.PLANNED)));
    one.merge(other);
    one.add(ObservedTime.ended(1, Cause.PLANNED), 1);
    assertEquals(1, KaplanMeier.of(other).points().get(0).atRisk());
    assertEquals(3, KaplanMeier.of(one).points().get(0).atRisk());
  }

  @Test
  void aCurveKeepsWhatWasCountedWhenItWasMade() {
    SurvivalTally<Cause> tally = RandomTimes.tally(List.of(ObservedTime.ended(1, Cause.PLANNED)));
    KaplanMeier curve = KaplanMeier.of(tally);
    CumulativeIncidence<Cause> incidence = CumulativeIncidence.of(tally);
    tally.add(ObservedTime.ended(1, Cause.BREAKDOWN), 1);
    assertEquals(OptionalDouble.of(1), curve.median());
    assertEquals(1, incidence.at(1).orElseThrow().endedBy(Cause.PLANNED));
  }

  @Test
  void countsBelowOneAndBeyondALongAreRefused() {
    SurvivalTally<Cause> tally = new SurvivalTally<>();
    assertThrows(IllegalArgumentException.class, () -> tally.add(ObservedTime.censored(1), 0));
    tally.add(ObservedTime.censored(1), Long.MAX_VALUE);
    assertThrows(ArithmeticException.class, () -> tally.add(ObservedTime.censored(1), 1));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void timesDoubledDoubleEveryTimeAndNothingElse(long seed) {
    var times = RandomTimes.someWithDelayedEntry(new Random(seed));
    KaplanMeier curve = KaplanMeier.of(RandomTimes.tally(times));
    KaplanMeier doubled =
        KaplanMeier.of(RandomTimes.tally(times.stream().map(SurvivalTallyTest::doubled).toList()));
    assertEquals(
        curve.points().stream()
            .map(
                point ->
                    new SurvivalPoint(
                        DOUBLED * point.time(),
                        point.atRisk(),
                        point.events(),
                        point.survival(),
                        point.standardError()))
            .toList(),
        doubled.points());
    assertEquals(
        curve
            .restrictedMean(7.3)
            .map(
                mean ->
                    new RestrictedMean(
                        DOUBLED * mean.mean(), DOUBLED * mean.standardError(), 14.6)),
        doubled.restrictedMean(14.6));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void censoringNeverRaisesTheEventRate(long seed) {
    Random random = new Random(seed);
    var times = RandomTimes.someWithDelayedEntry(random);
    UnaryOperator<ObservedTime<Cause>> maybeCensored =
        observed -> random.nextInt(4) == 0 ? censored(observed) : observed;
    SurvivalTally<Cause> seen = RandomTimes.tally(times);
    SurvivalTally<Cause> censored = RandomTimes.tally(times.stream().map(maybeCensored).toList());
    for (double time = 0; time < 20; time += 0.1) {
      assertTrue(hazardAt(time, censored) <= hazardAt(time, seen) + 1e-12);
      double later = time;
      KaplanMeier.of(censored)
          .survivalAt(time)
          .ifPresent(
              survival ->
                  assertTrue(
                      survival >= KaplanMeier.of(seen).survivalAt(later).orElseThrow() - 1e-12));
    }
  }

  private static double hazardAt(double time, SurvivalTally<Cause> tally) {
    return NelsonAalen.of(tally).points().stream()
        .filter(point -> point.time() <= time)
        .mapToDouble(NelsonAalen.Point::cumulativeHazard)
        .max()
        .orElse(0);
  }

  private static ObservedTime<Cause> censored(ObservedTime<Cause> observed) {
    ObservedTime<Cause> censored = ObservedTime.censored(observed.time());
    return observed.entry().isPresent()
        ? censored.enteredAt(observed.entry().getAsDouble())
        : censored;
  }

  private static ObservedTime<Cause> doubled(ObservedTime<Cause> observed) {
    double time = DOUBLED * observed.time();
    ObservedTime<Cause> doubled =
        observed instanceof ObservedTime.Ended<Cause> end
            ? ObservedTime.ended(time, end.cause())
            : ObservedTime.censored(time);
    return observed.entry().isPresent()
        ? doubled.enteredAt(DOUBLED * observed.entry().getAsDouble())
        : doubled;
  }

  private static SurvivalTally<Cause> merged(
      SurvivalTally<Cause> tally, List<ObservedTime<Cause>> others) {
    return merged(tally, RandomTimes.tally(others));
  }

  private static SurvivalTally<Cause> merged(
      SurvivalTally<Cause> tally, SurvivalTally<Cause> other) {
    tally.merge(other);
    return tally;
  }

  private static void assertAlike(SurvivalTally<Cause> one, SurvivalTally<Cause> other) {
    assertEquals(one.riskSets(), other.riskSets());
    assertEquals(one.lastTime(), other.lastTime());
  }
}
