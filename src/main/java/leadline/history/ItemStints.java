package leadline.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import leadline.fleet.Overhaul;
import leadline.history.ItemProblem.FittedTwice;
import leadline.history.ItemProblem.InTwoPlaces;
import leadline.problem.Checked;

/** Puts one item's stints in order. Where it is in two places at once, it is trusted in neither. */
final class ItemStints {

  private ItemStints() {}

  static Checked<List<Stint>, OverhaulProblem> inTime(List<Stint> stints) {
    List<Stint> sorted = stints.stream().sorted(Stint.IN_TIME).toList();
    List<Stint> trusted = new ArrayList<>(sorted);
    List<OverhaulProblem> problems = new ArrayList<>();
    Set<Overhaul> asked = new HashSet<>();
    for (int later = 1; later < sorted.size(); later++) {
      Optional<Stint> rival = Optional.empty();
      for (int i = 0; i < later; i++) {
        if (sorted.get(i).overlaps(sorted.get(later))) {
          rival = Optional.of(sorted.get(i));
          trusted.set(i, sorted.get(i).withHoursUnknown());
          trusted.set(later, sorted.get(later).withHoursUnknown());
        }
      }
      Stint stint = sorted.get(later);
      // Where a stint is itself in doubt, the doubt has been reported.
      rival
          .filter(earlier -> earlier.run().isPresent())
          .flatMap(earlier -> problem(earlier, stint, asked))
          .ifPresent(problems::add);
    }
    return new Checked<>(trusted, problems);
  }

  /** How many pairs of an item's stints have it in two places at once. */
  static long clashes(List<Stint> stints) {
    List<Stint> sorted = stints.stream().sorted(Stint.IN_TIME).toList();
    long clashes = 0;
    for (int later = 1; later < sorted.size(); later++) {
      Stint stint = sorted.get(later);
      clashes += sorted.subList(0, later).stream().filter(each -> each.overlaps(stint)).count();
    }
    return clashes;
  }

  /** Of one overhaul the ship is asked once. */
  private static Optional<OverhaulProblem> problem(Stint one, Stint other, Set<Overhaul> asked) {
    List<Stint> pair = Stream.of(one, other).sorted(Comparator.comparing(Stint::from)).toList();
    Stint first = pair.get(0);
    Stint second = pair.get(1);
    return Stream.of(
            second.beginning().overhaul(), first.beginning().overhaul(), one.ending().overhaul())
        .flatMap(Optional::stream)
        .findFirst()
        .filter(asked::add)
        .map(
            overhaul ->
                first.ending().overhaul().isPresent()
                    ? new InTwoPlaces(
                        overhaul.id(),
                        first.item(),
                        first.inWords(),
                        second.inWords(),
                        overhaul.origin())
                    : new FittedTwice(
                        overhaul.id(),
                        first.item(),
                        first.inWords(),
                        second.inWords(),
                        overhaul.origin()));
  }
}
