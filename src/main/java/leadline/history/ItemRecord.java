package leadline.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Item;
import leadline.fleet.MachineId;
import leadline.history.ItemProblem.OverhauledWhileFitted;
import leadline.history.Stint.Ending;
import leadline.problem.Checked;

/**
 * All that is on record of one item.
 *
 * @param stints in time
 * @param workshop visits to it while it was at no position, in time
 */
record ItemRecord(Item item, List<Stint> stints, List<PlacedVisit> workshop) {

  /** Puts the records in order; a workshop's visit while the item was fitted is left out. */
  static Checked<ItemRecord, OverhaulProblem> inTime(
      Item item, List<Stint> stints, List<PlacedVisit> workshop) {
    Checked<List<Stint>, OverhaulProblem> inTime = ItemStints.inTime(stints);
    List<OverhaulProblem> problems = new ArrayList<>(inTime.problems());
    List<PlacedVisit> ashore = new ArrayList<>();
    for (PlacedVisit visit : workshop.stream().sorted(PlacedVisit.IN_TIME).toList()) {
      Optional<Stint> meanwhile =
          stints.stream().filter(stint -> stint.isRunningAt(visit.removedAt())).findFirst();
      if (meanwhile.isEmpty()) {
        ashore.add(visit);
      } else {
        problems.add(OverhauledWhileFitted.of(visit.overhaul(), meanwhile.get()));
      }
    }
    return new Checked<>(new ItemRecord(item, inTime.value(), ashore), problems);
  }

  /** The machine that it was last on, or that the workshop's record names. */
  MachineId lastMachine() {
    return stints.isEmpty()
        ? workshop.get(workshop.size() - 1).overhaul().machine()
        : stints.get(stints.size() - 1).position().machine();
  }

  /**
   * The visit after which nothing is known of the item; none while it is fitted or out of sight.
   */
  Optional<PlacedVisit> last() {
    Optional<PlacedVisit> ashore =
        workshop.isEmpty() ? Optional.empty() : Optional.of(workshop.get(workshop.size() - 1));
    if (stints.isEmpty()) {
      return ashore;
    }
    Stint stint = stints.get(stints.size() - 1);
    return ashore
        .filter(visit -> !visit.removedAt().isBefore(stint.to()))
        .or(
            () ->
                stint.ending() instanceof Ending.Removed removed
                    ? Optional.of(removed.visit())
                    : Optional.empty());
  }
}
