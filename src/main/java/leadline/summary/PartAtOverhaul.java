package leadline.summary;

import java.util.List;
import leadline.fleet.Part;
import leadline.fleet.Reason;
import leadline.history.Inspection;
import leadline.history.MachineHistory;
import leadline.history.PartState;
import leadline.history.Visit;
import leadline.quantity.Period;

/** What one overhaul tells of one part. */
record PartAtOverhaul(Reason reason, PartState state) {

  /** What each overhaul of the subject within the period tells of it. */
  static List<PartAtOverhaul> each(MachineHistory history, PartSubject subject, Period period) {
    return Overhauls.within(history, subject.component(), period).stream()
        .map(visit -> new PartAtOverhaul(visit.overhaul().reason(), stateOf(subject.part(), visit)))
        .toList();
  }

  /** Opened, and its condition stated. */
  boolean isOpened() {
    return state.inspection() instanceof Inspection.Opened;
  }

  /** There is a finding, which leaves open whether the part was opened. */
  boolean isUnstated() {
    return state.inspection() instanceof Inspection.Unstated;
  }

  private static PartState stateOf(Part part, Visit visit) {
    return visit.parts().stream()
        .filter(state -> state.part().name().equals(part.name()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    visit.overhaul().id() + " has no state of part " + part.name()));
  }
}
