package leadline.history;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Position;
import leadline.quantity.RunningHours;

/** Follows every position of a machine that was observed. */
final class MachinePositions {

  private final String pool;
  private final MachineLog machine;
  private final PlacedVisits visits;
  private final Workbook workbook;

  private MachinePositions(
      String pool, MachineLog machine, PlacedVisits visits, Workbook workbook) {
    this.pool = pool;
    this.machine = machine;
    this.visits = visits;
    this.workbook = workbook;
  }

  /**
   * All positions of the machine. Its intervals, and visits of no known position, are entered in
   * the workbook.
   *
   * @param pool the vessels within which a serial is one item
   */
  static List<FollowedPosition> follow(
      String pool,
      MachineLog machine,
      PlacedVisits visits,
      Catalogue catalogue,
      Workbook workbook) {
    if (machine.observed().isEmpty()) {
      return List.of();
    }
    MachinePositions positions = new MachinePositions(pool, machine, visits, workbook);
    visits.withoutPosition().forEach(workbook::addOfNoItem);
    return catalogue.components().stream().flatMap(positions::followed).toList();
  }

  private Stream<FollowedPosition> followed(Component component) {
    return machine.entry().positions(component).stream()
        .map(position -> followed(component, position));
  }

  private FollowedPosition followed(Component component, Position position) {
    Optional<RunningHours> age =
        visits.overhauledByTheStart().contains(position) ? Optional.empty() : machine.ageAtStart();
    Optional<RunningHours> newAt = age.map(machine.hoursAt(machine.start())::minus);
    FollowedPosition followed =
        FollowedPosition.of(position, pool, machine, visits.at(position), age);
    PositionIntervals.of(component, machine, followed.stints(), newAt)
        .forEach(interval -> workbook.add(machine.entry().id(), interval));
    workbook.add(PositionStanding.of(component, position, machine, followed.stints(), newAt));
    return followed;
  }
}
