package leadline.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.MachineEntry;
import leadline.fleet.Overhaul;
import leadline.fleet.Position;
import leadline.fleet.PositionsPer;
import leadline.history.HourSeries.Bounded;
import leadline.history.OverhaulProblem.ComponentNotOnMachine;
import leadline.history.OverhaulProblem.OverhaulOutsideHours;
import leadline.history.OverhaulProblem.PositionUnknown;
import leadline.history.PlacedVisit.Standing;
import leadline.problem.Checked;
import leadline.quantity.RunningHours;

/** Joins one machine's overhauls to its positions and hours. */
final class VisitPlacer {

  private static final Comparator<Overhaul> IN_TIME =
      Comparator.comparing(Overhaul::removedAt).thenComparing(overhaul -> overhaul.id().overhaul());

  private final MachineLog machine;
  private final Catalogue catalogue;
  private final HourShifts shifts;

  private final List<OverhaulProblem> problems = new ArrayList<>();
  private final List<PlacedVisit> visits = new ArrayList<>();
  private final Set<Position> overhauledByTheStart = new HashSet<>();

  private VisitPlacer(MachineLog machine, Catalogue catalogue, RunningHours tolerance) {
    this.machine = machine;
    this.catalogue = catalogue;
    this.shifts = new HourShifts(tolerance);
  }

  static Checked<PlacedVisits, OverhaulProblem> place(
      List<Overhaul> overhauls, MachineLog machine, Catalogue catalogue, RunningHours tolerance) {
    VisitPlacer placer = new VisitPlacer(machine, catalogue, tolerance);
    overhauls.stream().sorted(IN_TIME).forEach(placer::place);
    placer.problems.addAll(placer.shifts.problems());
    return new Checked<>(
        new PlacedVisits(
            placer.visits.stream().sorted(PlacedVisit.IN_TIME).toList(),
            placer.overhauledByTheStart),
        placer.problems);
  }

  private void place(Overhaul overhaul) {
    Optional<Component> component =
        catalogue.component(overhaul.component()).filter(machine.entry()::carries);
    if (component.isEmpty()) {
      problems.add(
          new ComponentNotOnMachine(
              overhaul.id(),
              overhaul.component(),
              machine.entry().id(),
              machine.entry().kind(),
              overhaul.origin()));
      return;
    }
    Optional<Position> position = position(overhaul, component.get());
    if (isObserved(overhaul)) {
      addObserved(overhaul, component.get(), position);
      return;
    }
    problems.add(OverhaulOutsideHours.of(overhaul, machine.observed()));
    if (machine.observed().isPresent() && !overhaul.removedAt().isAfter(machine.start())) {
      position.ifPresent(at -> notePast(overhaul, component.get(), at));
    }
  }

  private void addObserved(Overhaul overhaul, Component component, Optional<Position> position) {
    PlacedVisit visit =
        new PlacedVisit(
            overhaul,
            component,
            position,
            machine.hoursAt(overhaul.removedAt()),
            Standing.OBSERVED);
    if (visit.workshopSerial().isPresent()) {
      visits.add(visit);
      return;
    }
    if (position.isEmpty()) {
      problems.add(PositionUnknown.of(overhaul, machine.entry()));
    }
    visits.add(visit.withHours(hours(overhaul)));
  }

  private boolean isObserved(Overhaul overhaul) {
    return machine.observed().filter(period -> period.contains(overhaul.removedAt())).isPresent();
  }

  private void notePast(Overhaul overhaul, Component component, Position position) {
    if (overhaul.reason().isOverhaul()) {
      overhauledByTheStart.add(position);
    }
    if (overhaul.removedAt().equals(machine.start())) {
      visits.add(
          new PlacedVisit(
              overhaul, component, Optional.of(position), hours(overhaul), Standing.AT_THE_START));
    }
  }

  /**
   * The overhaul's own figure where it is trusted, else the series' own: then hours between two
   * overhauls, and between an overhaul and a reading, are on one scale, and only what spans a shift
   * of the series is off by it.
   */
  private RunningHours hours(Overhaul overhaul) {
    Bounded series = machine.hours().at(overhaul.removedAt()).orElseThrow();
    Optional<RunningHours> written = overhaul.machineHours();
    if (written.isEmpty()) {
      return series.hours();
    }
    return shifts
        .trusted(overhaul, series, machine.hours().meaningsOf(written.get(), overhaul.removedAt()))
        .orElse(series.hours());
  }

  private Optional<Position> position(Overhaul overhaul, Component component) {
    MachineEntry entry = machine.entry();
    int unit = component.per() == PositionsPer.MACHINE ? 0 : overhaul.unit().orElse(-1);
    int place = component.per() == PositionsPer.PLACE ? place(overhaul, entry) : 0;
    Position position = new Position(entry.id(), component.name(), unit, place);
    return Optional.of(position).filter(entry.positions(component)::contains);
  }

  /** Where a cylinder has one place, naming the cylinder names the place. */
  private static int place(Overhaul overhaul, MachineEntry entry) {
    return overhaul.place().orElse(entry.placesPerCylinder() == 1 ? 1 : -1);
  }
}
