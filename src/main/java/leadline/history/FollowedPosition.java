package leadline.history;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Item;
import leadline.fleet.Overhaul;
import leadline.fleet.Position;
import leadline.problem.Checked;
import leadline.quantity.RunningHours;

/**
 * A position with the visits to it, and what they say was fitted there.
 *
 * @param pool the vessels within which a serial is one item
 * @param visits in time
 * @param ageOfOriginal the age at the start of observation of the item there, if it was new to the
 *     position
 * @param stints in time
 */
record FollowedPosition(
    Position position,
    String pool,
    MachineLog machine,
    List<PlacedVisit> visits,
    Optional<RunningHours> ageOfOriginal,
    List<Stint> stints,
    List<OtherItemOut> contradictions) {

  static FollowedPosition of(
      Position position,
      String pool,
      MachineLog machine,
      List<PlacedVisit> visits,
      Optional<RunningHours> ageOfOriginal) {
    Checked<List<Stint>, OtherItemOut> stints =
        PositionLog.stints(position, pool, machine, visits, ageOfOriginal);
    return new FollowedPosition(
        position, pool, machine, visits, ageOfOriginal, stints.value(), stints.problems());
  }

  /** The same position, had the overhaul been written so. */
  FollowedPosition with(Overhaul corrected) {
    return of(
        position,
        pool,
        machine,
        visits.stream().map(visit -> visit.with(corrected)).toList(),
        ageOfOriginal);
  }

  Stream<Stint> stintsOf(Item item) {
    return stints.stream().filter(stint -> stint.item().equals(item));
  }
}
