package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import leadline.stats.RandomTimes.Cause;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The curves computed again in a way that shares nothing with the first. */
class SecondRouteTest {

  /**
   * Source: Efron 1967, Proc. Fifth Berkeley Symposium 4:831: the mass of each censored duration is
   * handed on in equal parts to all later ones, ends before censorings where tied; what has ended
   * then carries S, and split by cause the cumulative incidence.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void massHandedToTheRightGivesTheSameShares(long seed) {
    List<ObservedTime<Cause>> times = RandomTimes.watchedFromStart(new Random(seed));
    KaplanMeier curve = KaplanMeier.of(RandomTimes.tally(times));
    CumulativeIncidence<Cause> incidence = CumulativeIncidence.of(RandomTimes.tally(times));
    for (ObservedTime<Cause> upTo : times) {
      Map<Cause, Double> expected = endedBy(upTo.time(), times);
      double ended = expected.values().stream().mapToDouble(Double::doubleValue).sum();
      assertEquals(1 - ended, curve.survivalAt(upTo.time()).orElseThrow(), 1e-12);
      var shares = incidence.at(upTo.time()).orElseThrow();
      for (Cause cause : Cause.values()) {
        assertEquals(expected.getOrDefault(cause, 0.0), shares.endedBy(cause), 1e-12);
      }
    }
  }

  /**
   * Source: Klein and Moeschberger 2003, section 4.5: without censoring the mean is that of the
   * sample, and its variance that of the sample over its size, with divisor n.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void withoutCensoringTheRestrictedMeanIsThatOfTheSample(long seed) {
    Random random = new Random(seed);
    double[] times = random.doubles(5 + random.nextInt(50), 0, 20_000).toArray();
    double horizon = 12_000;
    SurvivalTally<Cause> tally = new SurvivalTally<>();
    double sum = 0;
    double squares = 0;
    for (double time : times) {
      tally.add(ObservedTime.ended(time, Cause.PLANNED), 1);
      sum += Math.min(time, horizon);
      squares += Math.min(time, horizon) * Math.min(time, horizon);
    }
    double mean = sum / times.length;
    double variance = (squares / times.length - mean * mean) / times.length;
    RestrictedMean restricted = KaplanMeier.of(tally).restrictedMean(horizon).orElseThrow();
    assertEquals(mean, restricted.mean(), 1e-7);
    assertEquals(Math.sqrt(variance), restricted.standardError(), 1e-6);
  }

  private static Map<Cause, Double> endedBy(double last, List<ObservedTime<Cause>> times) {
    List<ObservedTime<Cause>> inOrder = new ArrayList<>(times);
    inOrder.sort(
        (one, other) ->
            one.time() == other.time()
                ? Boolean.compare(isCensored(one), isCensored(other))
                : Double.compare(one.time(), other.time()));
    Map<Cause, Double> ended = new HashMap<>();
    double massOfEach = 1.0 / inOrder.size();
    for (int index = 0; index < inOrder.size(); index++) {
      int later = inOrder.size() - index - 1;
      if (!(inOrder.get(index) instanceof ObservedTime.Ended<Cause> end)) {
        massOfEach += later == 0 ? 0 : massOfEach / later;
      } else if (end.time() <= last) {
        ended.merge(end.cause(), massOfEach, Double::sum);
      }
    }
    return ended;
  }

  private static boolean isCensored(ObservedTime<Cause> observed) {
    return observed instanceof ObservedTime.Censored<Cause>;
  }
}
