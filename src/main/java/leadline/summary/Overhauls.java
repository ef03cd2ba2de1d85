package leadline.summary;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.history.MachineHistory;
import leadline.history.Visit;
import leadline.quantity.Period;

/** Which of a machine's visits count as overhauls of a component in a window. */
final class Overhauls {

  private Overhauls() {}

  /** Those removed under observation within the window; with a position stated or not. */
  static List<Visit> within(MachineHistory history, Component component, Period window) {
    return within(history, window).stream()
        .filter(visit -> visit.component().name().equals(component.name()))
        .toList();
  }

  /** Those of all components. */
  static List<Visit> within(MachineHistory history, Period window) {
    Optional<Period> observed = history.observedWithin(window);
    return history.visits().stream()
        .filter(visit -> visit.overhaul().reason().isOverhaul())
        .filter(visit -> observed.filter(period -> period.contains(visit.at())).isPresent())
        .toList();
  }

  /** Those of all components of all these machines. */
  static List<Visit> within(List<MachineHistory> machines, Period window) {
    return machines.stream().flatMap(machine -> within(machine, window).stream()).toList();
  }
}
