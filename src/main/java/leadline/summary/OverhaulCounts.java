package leadline.summary;

import java.util.List;
import leadline.fleet.Component;
import leadline.fleet.Reason;
import leadline.history.Inspection;
import leadline.history.MachineHistory;
import leadline.history.Visit;
import leadline.quantity.Period;

/**
 * Overhauls of a component and the hours in which they were observed.
 *
 * @param inspected overhauls at which at least one part was opened and its condition stated
 */
record OverhaulCounts(
    ComponentHours hours, long planned, long condition, long breakdown, long inspected)
    implements Counts<OverhaulCounts> {

  static OverhaulCounts of(MachineHistory history, Component component, Period window) {
    List<Visit> overhauls = Overhauls.within(history, component, window);
    return new OverhaulCounts(
        ComponentHours.of(history, component, window),
        count(overhauls, Reason.PLANNED),
        count(overhauls, Reason.CONDITION),
        count(overhauls, Reason.BREAKDOWN),
        overhauls.stream().filter(OverhaulCounts::isInspected).count());
  }

  @Override
  public OverhaulCounts plus(OverhaulCounts other) {
    return new OverhaulCounts(
        hours.plus(other.hours),
        planned + other.planned,
        condition + other.condition,
        breakdown + other.breakdown,
        inspected + other.inspected);
  }

  long overhauls() {
    return planned + condition + breakdown;
  }

  private static long count(List<Visit> overhauls, Reason reason) {
    return overhauls.stream().filter(visit -> visit.overhaul().reason() == reason).count();
  }

  private static boolean isInspected(Visit visit) {
    return visit.parts().stream().anyMatch(part -> part.inspection() instanceof Inspection.Opened);
  }
}
