package leadline.sample;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadline.fleet.Component;
import leadline.fleet.MachineEntry;
import leadline.fleet.Position;
import leadline.fleet.Reason;
import leadline.sample.TrueLife.End;

/** What happens to one component of one machine, day after day. */
final class ComponentWorld {

  /** The component of which each vessel has spares to swap, and which therefore has serials. */
  private static final String ROTABLE = "fuel-injector";

  private static final int FEWEST_SPARES = 3;
  private static final int MOST_SPARES = 4;
  private static final int FIRST_SERIAL = 101;

  private final Component component;
  private final MachineDays days;
  private final int firstDay;
  private final Workshop workshop;
  private final Schedule schedule;
  private final Shelf shelf;
  private final LifeBook lives;
  private final Map<Integer, List<Slot>> units = new TreeMap<>();
  private final List<TrueOverhaul> overhauls = new ArrayList<>();

  private ComponentWorld(
      Component component,
      MachineDays days,
      int firstDay,
      Workshop workshop,
      LifeBook lives,
      Draw draw) {
    this.component = component;
    this.days = days;
    this.firstDay = firstDay;
    this.workshop = workshop;
    this.lives = lives;
    this.schedule = new Schedule(component.interval().hours(), draw.branch("schedule"));
    this.shelf = new Shelf(draw.branch("shelf"));
  }

  /** What came of it. */
  record Story(List<TrueOverhaul> overhauls, List<TrueLife> lives) {}

  static Story of(
      Component component,
      MachineEntry machine,
      SailingMachine sailing,
      FleetPlan plan,
      Draw draw) {
    MachineDays days = sailing.days();
    VesselCharacter vessel = sailing.vessel();
    int firstDay = days.day(vessel.overhaulsFrom(plan));
    PieceStore store =
        new PieceStore(
            sailing.hazardFactor(),
            days.day(plan.nozzleTypeChangedOn()),
            plan.influences().nozzleLifeFactor(),
            plan.influences().revelation(),
            draw.branch("pieces"));
    ComponentWorld world =
        new ComponentWorld(
            component,
            days,
            firstDay,
            new Workshop(component, vessel, plan.practice(), store, draw.branch("workshop")),
            new LifeBook(machine.id(), component, days.first(), firstDay),
            draw);
    FuelChange fuelChange =
        new FuelChange(
            days.endOf(Math.min(days.day(plan.fuelChangedOn()), days.count()) - 1),
            plan.influences().fuelFactor());
    world.fitOut(machine.positions(component), store, fuelChange, draw.branch("outfit"));
    world.units.values().forEach(unit -> world.schedule.begin(unit, sailing.mostGone()));
    world.live();
    world.close();
    return new Story(world.overhauls, world.lives.lives());
  }

  private void fitOut(
      List<Position> positions, PieceStore store, FuelChange fuelChange, Draw draw) {
    int serial = FIRST_SERIAL;
    for (Position position : positions) {
      String label = isRotable() ? "FV" + serial++ : position.label();
      Item item = store.item(label, component, 0);
      units
          .computeIfAbsent(position.unit(), unit -> new ArrayList<>())
          .add(new Slot(position, item, fuelChange));
    }
    int spares = isRotable() ? draw.among(FEWEST_SPARES, MOST_SPARES) : 0;
    for (int spare = 0; spare < spares; spare++) {
      shelf.add(store.item("FV" + serial++, component, 0), 0);
    }
  }

  private boolean isRotable() {
    return component.name().equals(ROTABLE);
  }

  private void live() {
    while (true) {
      Schedule.Due due = schedule.soonest();
      Slot weakest =
          slots().stream().min(Comparator.comparingLong(Slot::breaksDownAt)).orElseThrow();
      int dueDay = days.reaching(due.at());
      long plannedAt = dueDay < days.count() ? days.endOf(dueDay) : Slot.NEVER;
      if (Math.min(plannedAt, weakest.breaksDownAt()) > days.end()) {
        return;
      } else if (weakest.breaksDownAt() <= plannedAt) {
        long at = weakest.breaksDownAt();
        overhaul(weakest, at, days.reaching(at), Reason.BREAKDOWN);
        schedule.done(List.of(weakest), at);
      } else {
        List<Slot> batch = schedule.batch(due, plannedAt);
        batch.forEach(slot -> overhaul(slot, plannedAt, dueDay, due.reason()));
        schedule.done(batch, plannedAt);
      }
    }
  }

  private void overhaul(Slot slot, long at, int day, Reason reason) {
    Item removed = slot.remove(at);
    List<TrueFinding> findings = workshop.inspect(removed);
    for (int index = 0; index < findings.size(); index++) {
      Optional<End> ended = findings.get(index).ended();
      if (ended.isPresent()) {
        lives.end(removed, index, slot.position().label(), day, ended.get());
      }
    }
    workshop.assemble(removed, findings, day);
    Item fitted = shelf.exchange(removed, day);
    slot.fit(fitted, at);
    if (day >= firstDay) {
      Optional<TrueOverhaul.Serials> serials =
          isRotable()
              ? Optional.of(new TrueOverhaul.Serials(removed.label(), fitted.label()))
              : Optional.empty();
      overhauls.add(
          new TrueOverhaul(slot.position(), days.date(day), at, serials, reason, findings));
    }
  }

  private void close() {
    for (Slot slot : slots()) {
      lives.close(slot.remove(days.end()), slot.position().label(), End.STILL_FITTED);
    }
    shelf.items().forEach(item -> lives.close(item, "shelf", End.ON_SHELF));
  }

  private List<Slot> slots() {
    return units.values().stream().flatMap(List::stream).toList();
  }
}
