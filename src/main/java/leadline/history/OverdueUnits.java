package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Overhaul;
import leadline.fleet.Position;
import leadline.history.OverhaulsMissing.LongPastInterval;
import leadline.origin.Origin;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/**
 * Asks about positions that ran more than 1.75 policy intervals since the last overhaul on record,
 * or since their records begin: late overhauls seldom come later than 1.6, and one that was not
 * recorded shows as two intervals run as one. Common practice, no source.
 */
final class OverdueUnits {

  private final MachineHistory machine;
  private final Period observed;
  private final List<Overhaul> since;

  private OverdueUnits(MachineHistory machine, Period observed, List<Overhaul> overhauls) {
    this.machine = machine;
    this.observed = observed;
    this.since =
        overhauls.stream()
            .filter(overhaul -> overhaul.machine().equals(machine.machine().id()))
            .filter(overhaul -> overhaul.removedAt().isAfter(observed.end()))
            .toList();
  }

  /**
   * One question a unit, or one a machine where all of its positions of a component are overdue.
   *
   * @param overhauls of the vessel up to the cut-off; one after the last reading is asked about
   *     itself, and its position is not overdue
   */
  static List<LongPastInterval> on(
      MachineHistory machine, List<Overhaul> overhauls, Catalogue catalogue) {
    return machine
        .observed()
        .map(
            observed ->
                catalogue.components().stream()
                    .flatMap(
                        component ->
                            new OverdueUnits(machine, observed, overhauls).of(component).stream())
                    .toList())
        .orElse(List.of());
  }

  private record Overdue(Position position, RunningHours since, Origin origin) {}

  private List<LongPastInterval> of(Component component) {
    List<Position> positions = machine.machine().positions(component);
    List<Overdue> overdue =
        positions.stream()
            .map(this::lastOverhaul)
            .filter(position -> isOverdue(position, component))
            .toList();
    if (overdue.isEmpty()) {
      return List.of();
    }
    if (overdue.size() == positions.size()) {
      return List.of(question(component, Optional.empty(), overdue));
    }
    Map<Integer, List<Overdue>> units =
        overdue.stream()
            .collect(
                Collectors.groupingBy(
                    each -> each.position().unit(), TreeMap::new, Collectors.toList()));
    List<LongPastInterval> questions = new ArrayList<>();
    units.forEach((unit, its) -> questions.add(question(component, Optional.of(unit), its)));
    return questions;
  }

  private Overdue lastOverhaul(Position position) {
    return machine.visits().stream()
        .filter(visit -> visit.position().filter(position::equals).isPresent())
        .filter(visit -> visit.overhaul().reason().isOverhaul())
        .reduce((earlier, later) -> later)
        .map(visit -> new Overdue(position, visit.machineHours(), visit.overhaul().origin()))
        .orElseGet(
            () -> new Overdue(position, hoursAt(observed.start()), machine.machine().origin()));
  }

  private boolean isOverdue(Overdue position, Component component) {
    return runBy(observed.end(), position).isAbove(limit(component))
        && since.stream().noneMatch(overhaul -> isAt(position.position(), overhaul));
  }

  /** An overhaul that does not name its unit or place may be of any. */
  private static boolean isAt(Position position, Overhaul overhaul) {
    return overhaul.component().equals(position.component())
        && overhaul.unit().orElse(position.unit()) == position.unit()
        && overhaul.place().orElse(position.place()) == position.place();
  }

  private LongPastInterval question(
      Component component, Optional<Integer> unit, List<Overdue> overdue) {
    Overdue least = overdue.stream().max(Comparator.comparing(Overdue::since)).orElseThrow();
    Overdue most = overdue.stream().min(Comparator.comparing(Overdue::since)).orElseThrow();
    return new LongPastInterval(
        machine.machine().id(),
        component.name(),
        unit,
        overdue.stream().map(Overdue::position).toList(),
        runBy(observed.end(), least),
        component.interval(),
        tooLongSince(most, limit(component)),
        most.origin());
  }

  /** The end of the first day, counted from the start of observation, by which it ran too long. */
  private Instant tooLongSince(Overdue position, RunningHours limit) {
    long no = 0;
    long yes = Duration.between(observed.start(), observed.end()).toDays() + 1;
    while (yes - no > 1) {
      long middle = (no + yes) / 2;
      if (runBy(afterDays(middle), position).isAbove(limit)) {
        yes = middle;
      } else {
        no = middle;
      }
    }
    return afterDays(yes);
  }

  private Instant afterDays(long days) {
    Instant moment = observed.start().plus(Duration.ofDays(days));
    return moment.isAfter(observed.end()) ? observed.end() : moment;
  }

  private RunningHours runBy(Instant moment, Overdue position) {
    return hoursAt(moment).minus(position.since());
  }

  private RunningHours hoursAt(Instant moment) {
    return machine.hours().at(moment).orElseThrow().hours();
  }

  private static RunningHours limit(Component component) {
    return RunningHours.ofTenths(component.interval().tenths() * 7 / 4);
  }
}
