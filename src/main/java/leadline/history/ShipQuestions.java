package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import leadline.fleet.Catalogue;
import leadline.fleet.Overhaul;
import leadline.history.OverhaulProblem.FittedBeforeRemoved;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.Days;

/** All that a vessel is asked: contradictions in its records, and records that are not there. */
public final class ShipQuestions {

  private ShipQuestions() {}

  /**
   * The problems that the history met, and the questions that only all records together raise.
   *
   * @param cutOff that of the history
   * @param knownAt when the last of the records were known; a silence is judged as of then, or as
   *     of the cut-off if that was earlier
   */
  public static List<Problem> about(
      CurrentRecords current,
      Checked<VesselHistory, Problem> history,
      Catalogue catalogue,
      Instant cutOff,
      Instant knownAt) {
    VesselRecords records = current.forHistory();
    Instant asOf = cutOff.isBefore(knownAt) ? cutOff : knownAt;
    List<Problem> questions =
        new ArrayList<>(UnstatedOpenings.gathered(records, history.value(), history.problems()));
    List<Overhaul> overhauls =
        records.overhauls().stream()
            .filter(overhaul -> !overhaul.removedAt().isAfter(cutOff))
            .toList();
    overhauls.stream()
        .filter(overhaul -> overhaul.fittedOn().isBefore(overhaul.removedOn()))
        .map(
            overhaul ->
                new FittedBeforeRemoved(
                    overhaul.id(), overhaul.removedOn(), overhaul.fittedOn(), overhaul.origin()))
        .forEach(questions::add);
    for (MachineHistory machine : history.value().machines()) {
      if (SilentLogs.isInFleet(machine.machine(), asOf)) {
        questions.addAll(OverdueUnits.on(machine, overhauls, catalogue));
      }
    }
    questions.addAll(SilentLogs.among(records, asOf, knownAt));
    questions.addAll(SupplyQuestions.about(current, Days.lastWholeDayBy(asOf)));
    questions.addAll(StockQuestions.about(current, Days.lastWholeDayBy(asOf)));
    return questions;
  }
}
