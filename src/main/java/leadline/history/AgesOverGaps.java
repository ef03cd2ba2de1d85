package leadline.history;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leadline.fleet.OverhaulId;
import leadline.history.FindingProblem.AgesDisagree;
import leadline.problem.Problem;
import leadline.quantity.RunningHours;

/**
 * Leaves to the question about a gap in a machine's log the ages that it explains: a part stated to
 * be older than rebuilt, by no more than what may have been run besides while it was fitted, as if
 * it had been on the machine without a break.
 */
final class AgesOverGaps {

  private final Map<OverhaulId, Moment> visits;

  private AgesOverGaps(VesselHistory history) {
    this.visits =
        history.machines().stream()
            .flatMap(machine -> machine.visits().stream().map(visit -> new Moment(machine, visit)))
            .collect(Collectors.toMap(moment -> moment.visit().overhaul().id(), moment -> moment));
  }

  static List<Problem> leftOut(VesselHistory history, List<Problem> problems) {
    AgesOverGaps gaps = new AgesOverGaps(history);
    return problems.stream().filter(problem -> !gaps.explain(problem)).toList();
  }

  private boolean explain(Problem problem) {
    if (!(problem instanceof AgesDisagree ages)) {
      return false;
    }
    return Optional.ofNullable(visits.get(ages.overhaul()))
        .filter(at -> at.mayLack(ages.rebuilt(), ages.written().minus(ages.rebuilt())))
        .isPresent();
  }

  private record Moment(MachineHistory machine, Visit visit) {

    /** Whether so many hours may have been run besides, by a part of this age. */
    boolean mayLack(RunningHours age, RunningHours more) {
      RunningHours began = visit.machineHours().minus(age);
      return !more.isNegative() && !more.isAbove(machine.hours().unseen(began, visit.at()));
    }
  }
}
