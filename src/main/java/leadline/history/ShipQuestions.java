package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.Overhaul;
import leadline.history.OverhaulProblem.FittedBeforeRemoved;
import leadline.history.OverhaulsMissing.LongPastInterval;
import leadline.history.OverhaulsMissing.OverhaulsSilent;
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
        new ArrayList<>(
            AgesOverGaps.leftOut(
                history.value(),
                UnstatedOpenings.gathered(records, history.value(), history.problems())));
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
    Optional<OverhaulsSilent> silent =
        SilentOverhauls.among(records, history.value(), catalogue, asOf, knownAt);
    silent.ifPresent(questions::add);
    for (MachineHistory machine : history.value().machines()) {
      if (SilentLogs.isInFleet(machine.machine(), asOf)) {
        OverdueUnits.on(machine, overhauls, catalogue).stream()
            .filter(overdue -> silent.filter(quiet -> isOf(quiet, overdue)).isEmpty())
            .forEach(questions::add);
      }
    }
    questions.addAll(SilentLogs.among(records, catalogue, asOf, knownAt));
    questions.addAll(SupplyQuestions.about(current, Days.lastWholeDayBy(asOf)));
    questions.addAll(StockQuestions.about(current, Days.lastWholeDayBy(asOf)));
    return questions;
  }

  /** What fell due later, of a vessel that sends no overhauls any more, is the same question. */
  private static boolean isOf(OverhaulsSilent silent, LongPastInterval overdue) {
    return overdue.since().isAfter(silent.due());
  }
}
