package leadline.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Overhaul;
import leadline.history.OverhaulProblem.FittedTwice;
import leadline.history.Stint.Beginning;
import leadline.history.Stint.Ending;
import leadline.problem.Checked;

/** Puts one item's stints in order. Where it is in two places at once, it is trusted in neither. */
final class ItemStints {

  private ItemStints() {}

  static Checked<List<Stint>, OverhaulProblem> inTime(List<Stint> stints) {
    List<Stint> sorted = stints.stream().sorted(Stint.IN_TIME).toList();
    List<Stint> trusted = new ArrayList<>(sorted);
    List<OverhaulProblem> problems = new ArrayList<>();
    for (int later = 1; later < sorted.size(); later++) {
      Optional<Stint> rival = Optional.empty();
      for (int i = 0; i < later; i++) {
        if (sorted.get(i).overlaps(sorted.get(later))) {
          rival = Optional.of(sorted.get(i));
          trusted.set(i, sorted.get(i).withHoursUnknown());
          trusted.set(later, sorted.get(later).withHoursUnknown());
        }
      }
      problem(rival, sorted.get(later)).ifPresent(problems::add);
    }
    return new Checked<>(trusted, problems);
  }

  /** Where a stint is itself in doubt, the doubt has been reported. */
  private static Optional<OverhaulProblem> problem(Optional<Stint> rival, Stint stint) {
    return rival
        .filter(earlier -> earlier.run().isPresent())
        .flatMap(
            earlier ->
                Stream.of(fitting(stint), fitting(earlier), removal(earlier))
                    .flatMap(Optional::stream)
                    .findFirst()
                    .map(visit -> problem(earlier, stint, visit.overhaul())));
  }

  private static FittedTwice problem(Stint earlier, Stint later, Overhaul overhaul) {
    return new FittedTwice(
        overhaul.id(), later.item(), later.position(), earlier.position(), overhaul.origin());
  }

  private static Optional<PlacedVisit> fitting(Stint stint) {
    return stint.beginning() instanceof Beginning.Fitted fitted
        ? Optional.of(fitted.visit())
        : Optional.empty();
  }

  private static Optional<PlacedVisit> removal(Stint stint) {
    return stint.ending() instanceof Ending.Removed removed
        ? Optional.of(removed.visit())
        : Optional.empty();
  }
}
