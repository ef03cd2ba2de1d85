package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.LongStream;
import leadline.stats.RandomTimes.Cause;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Laws of the Kaplan-Meier, Nelson-Aalen and Aalen-Johansen estimates. Source of the laws: time has
 * no unit, rows have no order, a count is so many rows, and to enter at the start is not to enter.
 */
class SurvivalLawsTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 20);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void timesMultipliedMultiplyTimesAndNothingElse(long seed) {
    double factor = 4;
    List<ObservedTime<Cause>> times = RandomTimes.someWithDelayedEntry(new Random(seed));
    SurvivalTally<Cause> one = RandomTimes.tally(times);
    SurvivalTally<Cause> other =
        RandomTimes.tally(times.stream().map(time -> scaled(time, factor)).toList());
    List<SurvivalPoint> points = KaplanMeier.of(one).points();
    List<SurvivalPoint> scaled = KaplanMeier.of(other).points();
    assertEquals(points.size(), scaled.size());
    for (int index = 0; index < points.size(); index++) {
      assertEquals(factor * points.get(index).time(), scaled.get(index).time());
      assertEquals(points.get(index).survival(), scaled.get(index).survival());
      assertEquals(points.get(index).standardError(), scaled.get(index).standardError());
    }
    List<NelsonAalen.Point> hazards = NelsonAalen.of(one).points();
    List<NelsonAalen.Point> scaledHazards = NelsonAalen.of(other).points();
    for (int index = 0; index < hazards.size(); index++) {
      assertEquals(factor * hazards.get(index).time(), scaledHazards.get(index).time());
      assertEquals(
          hazards.get(index).cumulativeHazard(), scaledHazards.get(index).cumulativeHazard());
    }
    for (double time : ends(times)) {
      assertEquals(
          CumulativeIncidence.of(one).at(time), CumulativeIncidence.of(other).at(factor * time));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void neitherOrderNorSplitCountsNorPartsNorEntryAtTheStartMatter(long seed) {
    Random random = new Random(seed);
    SurvivalTally<Cause> whole = new SurvivalTally<>();
    List<ObservedTime<Cause>> rows = new ArrayList<>();
    for (ObservedTime<Cause> time : RandomTimes.someWithDelayedEntry(random)) {
      int count = 1 + random.nextInt(4);
      whole.add(time, count);
      boolean couldEnterAtStart = time.entry().isEmpty() && time.time() > 0;
      rows.addAll(Collections.nCopies(count, couldEnterAtStart ? time.enteredAt(0) : time));
    }
    Collections.shuffle(rows, random);
    int cut = random.nextInt(rows.size() + 1);
    SurvivalTally<Cause> parts = RandomTimes.tally(rows.subList(cut, rows.size()));
    parts.merge(RandomTimes.tally(rows.subList(0, cut)));
    assertEquals(KaplanMeier.of(whole).points(), KaplanMeier.of(parts).points());
    assertEquals(NelsonAalen.of(whole).points(), NelsonAalen.of(parts).points());
    for (double time : ends(rows)) {
      assertEquals(CumulativeIncidence.of(whole).at(time), CumulativeIncidence.of(parts).at(time));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void limitsOfSurvivalContainItAndWidenWithConfidence(long seed) {
    KaplanMeier curve =
        KaplanMeier.of(RandomTimes.tally(RandomTimes.someWithDelayedEntry(new Random(seed))));
    for (SurvivalPoint point : curve.points()) {
      assertWidening(point.survival(), point, SurvivalPoint::plainLimits);
      assertWidening(point.survival(), point, SurvivalPoint::logLogLimits);
    }
    curve
        .restrictedMean(5)
        .ifPresent(
            mean ->
                assertWidening(
                    mean.mean(), mean, (of, confidence) -> Optional.of(of.limits(confidence))));
  }

  private static <T> void assertWidening(
      double estimate, T of, BiFunction<T, Confidence, Optional<Limits>> limitsAt) {
    Limits last = new Limits(estimate, estimate);
    for (double level : new double[] {0.5, 0.8, 0.9, 0.95, 0.99}) {
      Optional<Limits> limits = limitsAt.apply(of, Confidence.of(level));
      if (limits.isPresent()) {
        assertTrue(limits.get().lower() <= last.lower() + 1e-12, () -> of + " at " + level);
        assertTrue(limits.get().upper() >= last.upper() - 1e-12, () -> of + " at " + level);
        last = limits.get();
      }
    }
  }

  private static Set<Double> ends(List<ObservedTime<Cause>> times) {
    Set<Double> ends = new TreeSet<>();
    times.forEach(time -> ends.add(time.time()));
    return ends;
  }

  private static ObservedTime<Cause> scaled(ObservedTime<Cause> time, double factor) {
    ObservedTime<Cause> scaled =
        time instanceof ObservedTime.Ended<Cause> ended
            ? ObservedTime.ended(factor * time.time(), ended.cause())
            : ObservedTime.censored(factor * time.time());
    return time.entry().isPresent()
        ? scaled.enteredAt(factor * time.entry().getAsDouble())
        : scaled;
  }
}
