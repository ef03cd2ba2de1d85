package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import leadline.stats.RandomTimes.Cause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogRankTest {

  /**
   * Source: by hand from Mantel 1966. At 1 one of four ends, two at risk in each group: 1/2
   * expected and variance 1/4; at 2 one of three, one of b: 1/3 and 2/9; at 3 one of two: 1/2 and
   * 1/4; at 4 the last ends whatever its group.
   */
  @Test
  void twoGroupsByHand() {
    LogRank<String> test = LogRank.of(Map.of("a", ends(1, 3), "b", ends(2, 4)));
    assertEquals(2, test.ends().firstEntry().getValue().observed());
    assertEquals(0.5 + 1 / 3.0 + 0.5, test.ends().firstEntry().getValue().expected(), 1e-15);
    double difference = 2 - (0.5 + 1 / 3.0 + 0.5);
    double variance = 0.25 + 2 / 9.0 + 0.25;
    ChiSquared found = test.test().orElseThrow();
    assertEquals(difference * difference / variance, found.statistic(), 1e-12);
    assertEquals(1, found.degreesOfFreedom());
  }

  /** Source: Kalbfleisch and Prentice 2002, section 1.5: sums over strata. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void strataAlikeAddUp(long seed) {
    Map<String, SurvivalTally<Cause>> stratum = threeGroups(new Random(seed));
    ChiSquared one = LogRank.of(stratum).test().orElseThrow();
    ChiSquared both = LogRank.stratified(List.of(stratum, stratum)).test().orElseThrow();
    assertEquals(2 * one.statistic(), both.statistic(), 1e-9);
    assertEquals(one.degreesOfFreedom(), both.degreesOfFreedom());
  }

  /** Source: the definitions of a group's name, of time, of a count and of delayed entry. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void neitherNamesNorUnitNorSplitCountsNorEntryAtZeroMatter(long seed) {
    Map<String, SurvivalTally<Cause>> groups = threeGroups(new Random(seed));
    Map<String, SurvivalTally<Cause>> altered =
        Map.of(
            "z", altered(new Random(seed), 0),
            "y", altered(new Random(seed), 1),
            "x", altered(new Random(seed), 2));
    ChiSquared one = LogRank.of(groups).test().orElseThrow();
    ChiSquared other = LogRank.of(altered).test().orElseThrow();
    assertEquals(one.degreesOfFreedom(), other.degreesOfFreedom());
    assertEquals(one.statistic(), other.statistic(), 1e-9 * (1 + one.statistic()));
  }

  /** Source: a group that is never at risk with others takes no part. */
  @Test
  void aGroupNeverAtRiskIsLeftOut() {
    Map<String, SurvivalTally<Cause>> two = Map.of("a", ends(1, 3, 5), "b", ends(2, 4, 6));
    SurvivalTally<Cause> early = new SurvivalTally<>();
    early.add(ObservedTime.censored(0.5), 7);
    Map<String, SurvivalTally<Cause>> three =
        Map.of("a", ends(1, 3, 5), "b", ends(2, 4, 6), "early", early);
    assertEquals(LogRank.of(two).test(), LogRank.of(three).test());
    assertEquals(3, LogRank.of(three).ends().size());
    assertEquals(Optional.empty(), LogRank.of(Map.of("a", ends(1), "early", early)).test());
    assertEquals(Optional.empty(), LogRank.of(Map.of("a", ends(1, 2))).test());
  }

  /** Source: two pairs of groups that never meet are two tests, which add up. */
  @Test
  void groupsThatNeverMeetAreComparedApart() {
    Map<String, SurvivalTally<Cause>> early = Map.of("a", ends(1, 3), "b", ends(2, 4));
    Map<String, SurvivalTally<Cause>> late =
        Map.of("c", entering(11, 12, 13), "d", entering(14, 15));
    Map<String, SurvivalTally<Cause>> all =
        Map.of(
            "a", ends(1, 3),
            "b", ends(2, 4),
            "c", entering(11, 12, 13),
            "d", entering(14, 15));
    ChiSquared found = LogRank.of(all).test().orElseThrow();
    assertEquals(2, found.degreesOfFreedom());
    assertEquals(
        LogRank.of(early).test().orElseThrow().statistic()
            + LogRank.of(late).test().orElseThrow().statistic(),
        found.statistic(),
        1e-12);
  }

  private static Map<String, SurvivalTally<Cause>> threeGroups(Random random) {
    long seed = random.nextLong();
    return Map.of(
        "a", RandomTimes.tally(times(seed, 0)),
        "b", RandomTimes.tally(times(seed, 1)),
        "c", RandomTimes.tally(times(seed, 2)));
  }

  private static SurvivalTally<Cause> altered(Random random, int group) {
    SurvivalTally<Cause> tally = new SurvivalTally<>();
    for (ObservedTime<Cause> time : times(random.nextLong(), group)) {
      double later = time.time() * 8;
      ObservedTime<Cause> same =
          time instanceof ObservedTime.Censored<Cause>
              ? ObservedTime.censored(later)
              : ObservedTime.ended(later, Cause.PLANNED);
      if (time.entry().isPresent()) {
        same = same.enteredAt(time.entry().getAsDouble() * 8);
      } else if (later > 0) {
        same = same.enteredAt(0);
      }
      tally.add(same, 1);
    }
    return tally;
  }

  private static List<ObservedTime<Cause>> times(long seed, int group) {
    List<ObservedTime<Cause>> times =
        new ArrayList<>(RandomTimes.someWithDelayedEntry(new Random(seed + group)));
    times.removeIf(time -> time.time() == 0);
    return times;
  }

  private static SurvivalTally<Cause> ends(double... times) {
    SurvivalTally<Cause> tally = new SurvivalTally<>();
    for (double time : times) {
      tally.add(ObservedTime.ended(time, Cause.PLANNED), 1);
    }
    return tally;
  }

  private static SurvivalTally<Cause> entering(double... times) {
    SurvivalTally<Cause> tally = new SurvivalTally<>();
    for (double time : times) {
      tally.add(ObservedTime.<Cause>ended(time, Cause.PLANNED).enteredAt(10), 1);
    }
    return tally;
  }
}
