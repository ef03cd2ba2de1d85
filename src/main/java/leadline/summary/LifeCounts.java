package leadline.summary;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import leadline.fleet.FailureShows;
import leadline.fleet.Part;
import leadline.history.MachineHistory;
import leadline.history.PartLife;
import leadline.quantity.Period;
import leadline.stats.LifeData;

/**
 * The lives of a part by what each tells, with the openings that showed it.
 *
 * @param seen how many lives of known age told the same
 * @param withoutAge lives of unknown origin
 */
record LifeCounts(
    ComponentHours hours, OpeningCounts openings, SortedMap<SeenLife, Long> seen, long withoutAge)
    implements Counts<LifeCounts> {

  static final LifeCounts NONE =
      new LifeCounts(ComponentHours.NONE, OpeningCounts.NONE, new TreeMap<>(), 0);

  static LifeCounts of(MachineHistory history, PartSubject subject, Period sinceStart) {
    List<PartLife> lives =
        history.lives().stream()
            .filter(life -> life.component().name().equals(subject.component().name()))
            .filter(life -> life.part().name().equals(subject.part().name()))
            .toList();
    SortedMap<SeenLife, Long> seen = new TreeMap<>();
    lives.stream()
        .map(SeenLife::of)
        .flatMap(Optional::stream)
        .forEach(life -> seen.merge(life, 1L, Long::sum));
    return new LifeCounts(
        ComponentHours.of(history, subject.component(), sinceStart),
        OpeningCounts.of(PartAtOverhaul.each(history, subject, sinceStart)),
        seen,
        lives.size() - count(seen));
  }

  @Override
  public LifeCounts plus(LifeCounts other) {
    SortedMap<SeenLife, Long> sum = new TreeMap<>(seen);
    other.seen.forEach((life, times) -> sum.merge(life, times, Long::sum));
    return new LifeCounts(
        hours.plus(other.hours), openings.plus(other.openings), sum, withoutAge + other.withoutAge);
  }

  /**
   * Whether the openings were not chosen by the part's condition, so that its lives may be put on a
   * curve. A failure that always shows needs no opening.
   */
  boolean isRoutinelyOpened(Part part) {
    return part.failureShows() == FailureShows.ALWAYS || !openings.isSelective();
  }

  /** All lives, with and without age. */
  long lives() {
    return count(seen) + withoutAge;
  }

  long count(Predicate<SeenLife> which) {
    return seen.entrySet().stream()
        .filter(entry -> which.test(entry.getKey()))
        .mapToLong(Map.Entry::getValue)
        .sum();
  }

  long failures() {
    return count(SeenLife::isFailure);
  }

  /** The lives that tell anything, for fits. */
  LifeData data() {
    LifeData.Builder data = new LifeData.Builder();
    seen.forEach(
        (life, times) -> {
          if (life.tellsAnything()) {
            data.add(life.life(), times);
          }
        });
    return data.build();
  }

  private static long count(SortedMap<SeenLife, Long> lives) {
    return lives.values().stream().mapToLong(Long::longValue).sum();
  }
}
