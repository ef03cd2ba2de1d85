package leadline.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import leadline.fleet.Clock;
import leadline.fleet.Part;
import leadline.quantity.RunningHours;

/**
 * The lives of a part that may be put on a curve: those of machines on which openings were not
 * chosen by its condition.
 *
 * @param byVessel lives that may be, none of them empty
 * @param total of all vessels
 * @param leftOut lives on vessels that choose what they open
 */
record RoutineLives(SortedMap<String, LifeCounts> byVessel, LifeCounts total, long leftOut) {

  private static final int FEWEST_AGES = 3;

  static RoutineLives of(Stratum<LifeCounts> stratum, Part part) {
    SortedMap<String, LifeCounts> byVessel = new TreeMap<>();
    long leftOut = 0;
    for (var member : stratum.members().entrySet()) {
      LifeCounts counts = member.getValue();
      if (!counts.isRoutinelyOpened(part)) {
        leftOut += counts.lives();
      } else if (counts.lives() > 0) {
        byVessel.merge(member.getKey().vessel(), counts, LifeCounts::plus);
      }
    }
    return new RoutineLives(
        byVessel,
        byVessel.isEmpty() ? LifeCounts.NONE : Counts.sum(List.copyOf(byVessel.values())),
        leftOut);
  }

  /**
   * What curves of these lives may be used for.
   *
   * @param interval the policy interval of the component
   */
  Verdict verdict(Part part, RunningHours interval) {
    if (part.clock() != Clock.HOURS) {
      return Verdict.WRONG_CLOCK;
    }
    long telling = total.count(SeenLife::tellsAnything);
    if (telling == 0 && leftOut > 0) {
      return Verdict.SELECTIVE_OPENING;
    }
    Verdict byCount = Verdict.of(telling, total.failures());
    return byCount == Verdict.OK && separatedAges(interval) < FEWEST_AGES
        ? Verdict.TOO_FEW
        : byCount;
  }

  /** The greatest age of which a life tells. */
  RunningHours longestAge() {
    return total.seen().keySet().stream()
        .filter(SeenLife::tellsAnything)
        .map(SeenLife::lastAge)
        .max(RunningHours::compareTo)
        .orElse(RunningHours.ZERO);
  }

  /**
   * How many of the ages at which a part was seen lie a quarter of the policy interval apart: with
   * fewer than three a shape is drawn through two points.
   */
  private int separatedAges(RunningHours interval) {
    TreeSet<RunningHours> ages = new TreeSet<>();
    total.seen().keySet().stream()
        .filter(SeenLife::tellsAnything)
        .forEach(life -> ages.addAll(List.of(life.workedAt(), life.lastAge())));
    ages.remove(RunningHours.ZERO);
    List<RunningHours> apart = new ArrayList<>();
    for (RunningHours age : ages) {
      if (apart.isEmpty() || isApart(apart.get(apart.size() - 1), age, interval)) {
        apart.add(age);
      }
    }
    return apart.size();
  }

  private static boolean isApart(RunningHours one, RunningHours later, RunningHours interval) {
    return !interval.isAbove(later.minus(one).times(4));
  }
}
