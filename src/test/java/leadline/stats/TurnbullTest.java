package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TurnbullTest {

  private static final double NEVER = Double.POSITIVE_INFINITY;

  /** Source: Finkelstein and Wolfe 1985, Biometrics 41:933, radiotherapy alone. */
  @Test
  void publishedMassesOfBreastRetraction() {
    Turnbull estimate = Turnbull.of(BreastRetraction.afterRadiotherapy());
    double[][] published = {
      {4, 5, .0463},
      {6, 7, .0334},
      {7, 8, .0887},
      {11, 12, .0708},
      {24, 25, .0926},
      {33, 34, .0818},
      {38, 40, .1209},
      {46, 48, .4656}
    };
    List<Turnbull.Support> support = estimate.support();
    assertEquals(published.length, support.size());
    for (int index = 0; index < published.length; index++) {
      assertEquals(published[index][0], support.get(index).left());
      assertEquals(published[index][1], support.get(index).right());
      assertEquals(published[index][2], support.get(index).mass(), 5e-5);
    }
    assertEquals(14, estimate.candidates());
  }

  /**
   * Source: Turnbull 1976, formulas 3.1 to 3.4: repeated to the end, self-consistency is enough.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void selfConsistencyComesNoHigher(long seed) {
    List<ObservedInterval> durations = RandomIntervals.mixed(new Random(seed));
    Turnbull estimate = Turnbull.of(durations);
    double selfConsistent = selfConsistent(durations);
    assertTrue(estimate.logLikelihood() >= selfConsistent - 1e-9);
    assertEquals(selfConsistent, estimate.logLikelihood(), 1e-3);
    assertEquals(1, estimate.support().stream().mapToDouble(Turnbull.Support::mass).sum(), 1e-12);
  }

  /** The log-likelihood after many steps of mass shared out anew, on points at hand. */
  private static double selfConsistent(List<ObservedInterval> durations) {
    double[] points = new double[0];
    for (ObservedInterval duration : durations) {
      points = Arrays.copyOf(points, points.length + 1);
      points[points.length - 1] =
          duration.isRightCensored() ? duration.lower() + 0.5 : duration.upper();
    }
    double[] masses = new double[points.length];
    Arrays.fill(masses, 1.0 / masses.length);
    double logLikelihood = 0;
    for (int step = 0; step < 5000; step++) {
      double[] next = new double[masses.length];
      logLikelihood = 0;
      for (ObservedInterval duration : durations) {
        double probability = 0;
        for (int point = 0; point < points.length; point++) {
          probability += holds(duration, points[point]) ? masses[point] : 0;
        }
        logLikelihood += Math.log(probability);
        for (int point = 0; point < points.length; point++) {
          next[point] +=
              holds(duration, points[point]) ? masses[point] / probability / durations.size() : 0;
        }
      }
      masses = next;
    }
    return logLikelihood;
  }

  private static boolean holds(ObservedInterval duration, double point) {
    return duration.isExact()
        ? point == duration.lower()
        : duration.lower() < point && point <= duration.upper();
  }

  /** Source: Peto 1973: on seen ends and right-censoring it is the product-limit estimate. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void withoutInspectionsItIsKaplanMeier(long seed) {
    var times = RandomTimes.watchedFromStart(new Random(seed));
    KaplanMeier curve = KaplanMeier.of(RandomTimes.tally(times));
    Turnbull estimate = Turnbull.of(RandomIntervals.of(times));
    for (SurvivalPoint point : curve.points()) {
      Limits edges = estimate.survivalAt(point.time());
      assertEquals(point.survival(), edges.lower(), 1e-11);
      assertEquals(point.survival(), edges.upper(), 1e-11);
    }
  }

  /** Source: Ayer et al. 1955: inspected once each, pooling adjacent violators maximizes. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void inspectedOnceEachItIsTheIsotonicEstimate(long seed) {
    List<ObservedInterval> durations = RandomIntervals.currentStatus(new Random(seed));
    Turnbull estimate = Turnbull.of(durations);
    for (CurrentStatus.Point point : CurrentStatus.points(durations)) {
      Limits edges = estimate.survivalAt(point.age());
      assertTrue(edges.lower() - 1e-9 <= 1 - point.failedBy());
      assertTrue(1 - point.failedBy() <= edges.upper() + 1e-9);
    }
  }

  /** Source: the definition: an interval that closes in on its end says when it ended. */
  @Test
  void intervalsShrinkingToPointsTendToSeenEnds() {
    List<ObservedInterval> narrow = new ArrayList<>();
    List<ObservedInterval> seen = new ArrayList<>();
    for (double end : new double[] {3, 4, 4, 7, 9}) {
      narrow.add(ObservedInterval.within(end - 1e-9, end));
      seen.add(ObservedInterval.at(end));
    }
    for (double censored : new double[] {3.5, 8}) {
      narrow.add(ObservedInterval.beyond(censored));
      seen.add(ObservedInterval.beyond(censored));
    }
    for (double time = 0; time < 10; time += 0.25) {
      assertEquals(
          Turnbull.of(seen).survivalAt(time).lower(),
          Turnbull.of(narrow).survivalAt(time).lower(),
          1e-12);
    }
  }

  /** Source: time has no unit, rows have no order, and a weight counts rows alike. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void neitherUnitNorOrderNorSplitWeightsMatter(long seed) {
    Random random = new Random(seed);
    List<ObservedInterval> durations = RandomIntervals.mixed(random);
    List<ObservedInterval> altered = new ArrayList<>();
    for (ObservedInterval duration : durations) {
      double share = random.nextInt(8) / 8.0;
      ObservedInterval scaled =
          new ObservedInterval(duration.lower() * 512, duration.upper() * 512, 1);
      if (share > 0) {
        altered.add(scaled.times(share));
      }
      altered.add(scaled.times(1 - share));
    }
    Collections.shuffle(altered, random);
    Turnbull one = Turnbull.of(durations);
    Turnbull other = Turnbull.of(altered);
    assertEquals(one.logLikelihood(), other.logLikelihood(), 1e-10);
    assertEquals(one.candidates(), other.candidates());
    for (Turnbull.Support support : one.support()) {
      double time = support.right() == NEVER ? 1e6 : support.right();
      assertEquals(one.survivalAt(time).upper(), other.survivalAt(time * 512).upper(), 1e-9);
    }
  }

  /** Source: Gentleman and Geyer 1994: at a maximum no slope exceeds the total weight. */
  @Test
  void tenThousandIntervalsOnFiveHundredAgesAreCertified() {
    Random random = new Random(3);
    List<ObservedInterval> durations = new ArrayList<>();
    for (int index = 0; index < 10_000; index++) {
      double life = 20_000 * Math.sqrt(-Math.log(1 - random.nextDouble()));
      double phase = 100 * (1 + random.nextInt(40));
      double passed = phase;
      while (passed < life && passed < 48_000) {
        passed += 4000;
      }
      durations.add(
          passed < life
              ? ObservedInterval.beyond(passed)
              : ObservedInterval.within(passed == phase ? 0 : passed - 4000, passed));
    }
    Turnbull estimate = Turnbull.of(durations);
    assertTrue(estimate.candidates() > 400);
    assertTrue(estimate.shortfall() < 1e-9 * durations.size());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void weightsOfVeryDifferentSizeAreCertifiedToo(long seed) {
    Random random = new Random(seed);
    List<ObservedInterval> durations = new ArrayList<>();
    RandomIntervals.mixed(random)
        .forEach(one -> durations.add(one.times(Math.pow(10, random.nextInt(10)))));
    double total = durations.stream().mapToDouble(ObservedInterval::weight).sum();
    assertTrue(Turnbull.of(durations).shortfall() <= 1e-11 * total);
  }

  /** Source: by hand: mass between two inspections may lie at either end of the interval. */
  @Test
  void withinAnIntervalTheEdgesAreApart() {
    Turnbull estimate = Turnbull.of(List.of(ObservedInterval.within(2, 4), ObservedInterval.at(6)));
    assertEquals(new Limits(1, 1), estimate.survivalAt(2));
    assertEquals(new Limits(0.5, 1), estimate.survivalAt(3));
    assertEquals(new Limits(0.5, 0.5), estimate.survivalAt(4));
    assertEquals(new Limits(0.5, 0.5), estimate.survivalAt(5.9));
    assertEquals(new Limits(0, 0), estimate.survivalAt(6));
    assertThrows(IllegalArgumentException.class, () -> estimate.survivalAt(-1));
  }

  @Test
  void withoutAnEndAllMassLiesBeyondTheLastLook() {
    Turnbull estimate =
        Turnbull.of(List.of(ObservedInterval.beyond(5), ObservedInterval.beyond(3)));
    assertEquals(List.of(new Turnbull.Support(5, NEVER, 1, 0)), estimate.support());
    assertEquals(new Limits(1, 1), estimate.survivalAt(5));
    assertEquals(new Limits(0, 1), estimate.survivalAt(6));
    assertThrows(IllegalArgumentException.class, () -> Turnbull.of(List.of()));
  }
}
