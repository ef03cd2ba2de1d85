package leadline.history;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Position;
import leadline.problem.Checked;
import leadline.quantity.RunningHours;

/** Follows every position of a machine that was observed. */
final class MachinePositions {

  private final MachineLog machine;
  private final PlacedVisits visits;
  private final Workbook workbook;

  private MachinePositions(MachineLog machine, PlacedVisits visits, Workbook workbook) {
    this.machine = machine;
    this.visits = visits;
    this.workbook = workbook;
  }

  /**
   * The stints at all positions of the machine. Its intervals, and visits of no known position, are
   * entered in the workbook.
   */
  static List<Stint> follow(
      MachineLog machine, PlacedVisits visits, Catalogue catalogue, Workbook workbook) {
    if (machine.observed().isEmpty()) {
      return List.of();
    }
    MachinePositions positions = new MachinePositions(machine, visits, workbook);
    visits.withoutPosition().forEach(positions::enter);
    return catalogue.components().stream().flatMap(positions::stints).toList();
  }

  private Stream<Stint> stints(Component component) {
    return machine.entry().positions(component).stream()
        .flatMap(position -> stints(component, position).stream());
  }

  private List<Stint> stints(Component component, Position position) {
    Optional<RunningHours> age =
        visits.overhauledByTheStart().contains(position) ? Optional.empty() : machine.ageAtStart();
    Checked<List<Stint>, OverhaulProblem> stints =
        PositionLog.stints(position, machine, visits.at(position), age);
    workbook.report(stints.problems());
    Optional<RunningHours> newAt = age.map(machine.hoursAt(machine.start())::minus);
    PositionIntervals.of(component, machine, stints.value(), newAt)
        .forEach(interval -> workbook.add(machine.entry().id(), interval));
    workbook.add(PositionStanding.of(component, position, machine, stints.value(), newAt));
    return stints.value();
  }

  private void enter(PlacedVisit visit) {
    List<PartState> parts =
        visit.component().parts().stream()
            .map(part -> workbook.finding(visit, part).stateAt(Optional.empty()))
            .toList();
    workbook.add(visit, Optional.empty(), parts);
  }
}
