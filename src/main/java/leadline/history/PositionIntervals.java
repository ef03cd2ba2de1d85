package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.fleet.Reason;
import leadline.history.OverhaulInterval.Subject;
import leadline.history.Stint.Ending;
import leadline.quantity.RunningHours;

/** The intervals of one position from overhaul to overhaul, in machine hours. */
final class PositionIntervals {

  private PositionIntervals() {}

  /**
   * @param stints of the position, in time
   * @param newAt the machine's hours when the position's original item was new; none where that is
   *     not known
   */
  static List<OverhaulInterval> of(
      Component component, MachineLog machine, List<Stint> stints, Optional<RunningHours> newAt) {
    List<OverhaulInterval> intervals = new ArrayList<>();
    Optional<RunningHours> since = newAt;
    RunningHours last = machine.hoursAt(machine.start());
    for (PlacedVisit visit : overhauls(stints)) {
      last = visit.hours();
      if (visit.isObserved()) {
        intervals.add(
            interval(
                component, since, last, visit.removedAt(), Optional.of(visit.overhaul().reason())));
      }
      since = Optional.of(last);
    }
    RunningHours end = machine.hoursAt(machine.end()).max(last);
    intervals.add(interval(component, since, end, machine.end(), Optional.empty()));
    return intervals;
  }

  /** The overhauls among what ended them. */
  static List<PlacedVisit> overhauls(List<Stint> stints) {
    return stints.stream()
        .map(Stint::ending)
        .filter(Ending.Removed.class::isInstance)
        .map(Ending.Removed.class::cast)
        .map(Ending.Removed::visit)
        .filter(PlacedVisit::isOverhaul)
        .toList();
  }

  private static OverhaulInterval interval(
      Component component,
      Optional<RunningHours> since,
      RunningHours hours,
      Instant until,
      Optional<Reason> endedBy) {
    return new OverhaulInterval(
        component, Subject.POSITION, since.map(hours::minus), until, endedBy);
  }
}
