package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.fleet.Item;
import leadline.fleet.MachineId;
import leadline.fleet.Part;
import leadline.fleet.Position;
import leadline.fleet.Reason;
import leadline.history.OverhaulInterval.Subject;
import leadline.history.PartLedger.EndOfLife;
import leadline.history.PositionStanding.ShutPart;
import leadline.history.Stint.Beginning;
import leadline.history.Stint.Ending;
import leadline.quantity.RunningHours;

/**
 * One item through its stints: its clock runs while it is fitted, its overhauls end its intervals,
 * and each of its parts has a ledger while the item is in sight.
 */
final class ItemLedger {

  private final Item item;
  private final Component component;
  private final Workbook workbook;
  private final Map<Part, Integer> lives = new HashMap<>();
  private final List<Seen> seen = new ArrayList<>();
  private final Map<Part, Opening> openings = new HashMap<>();

  private RunningHours clock = RunningHours.ZERO;
  private Optional<Sighting> sighting = Optional.empty();

  private ItemLedger(Item item, Component component, Workbook workbook) {
    this.item = item;
    this.component = component;
    this.workbook = workbook;
  }

  /**
   * @param stints of the item, in time; at least one
   */
  static void follow(Item item, Component component, List<Stint> stints, Workbook workbook) {
    ItemLedger ledger = new ItemLedger(item, component, workbook);
    stints.forEach(ledger::follow);
    MachineId lastMachine = stints.get(stints.size() - 1).position().machine();
    ledger.sighting.ifPresent(inSight -> ledger.shelve(lastMachine, inSight));
    ledger.seen.forEach(ledger::enter);
  }

  private void follow(Stint stint) {
    MachineId machine = stint.position().machine();
    if (stint.run().isPresent() || stint.ending() instanceof Ending.OutOfSight) {
      inSight(stint.beginning());
    }
    if (stint.run().isEmpty()) {
      loseSight(machine);
    }
    clock = clock.plus(stint.run().orElse(RunningHours.ZERO));
    if (stint.ending() instanceof Ending.Removed removed) {
      visit(removed.visit(), inSight(new Beginning.Unseen()));
    } else if (stint.ending() instanceof Ending.StillFitted) {
      stay(stint.position(), inSight(new Beginning.Unseen()));
    }
  }

  /** The item as it is in sight; from now on, if it was not. */
  private Sighting inSight(Beginning beginning) {
    Sighting inSight = sighting.orElseGet(() -> Sighting.begin(component, clock, beginning.age()));
    sighting = Optional.of(inSight);
    return inSight;
  }

  private void visit(PlacedVisit visit, Sighting inSight) {
    List<SeenPart> seenParts = new ArrayList<>();
    for (PartLedger part : inSight.parts()) {
      PartFinding finding = workbook.finding(visit, part.part());
      seenParts.add(new SeenPart(finding, part.age(), clock));
      workbook.compareAges(finding, part.age().at(clock));
      if (finding.inspection() instanceof Inspection.Opened || finding.isRenewed()) {
        openings.put(part.part(), new Opening(visit.removedAt(), clock));
      }
      finding.hoursSinceNew().ifPresent(age -> part.dateFrom(age, clock));
      Evidence evidence = Evidence.of(visit, finding);
      part.witness(evidence, clock).ifPresent(end -> addLife(part, end, visit));
      if (finding.isRenewed()) {
        part.renew(evidence, clock).ifPresent(end -> addLife(part, end, visit));
      }
    }
    seen.add(new Seen(visit, seenParts));
    if (visit.isOverhaul()) {
      if (visit.isObserved()) {
        addInterval(inSight, Optional.of(visit.overhaul().reason()), visit.overhaul().machine());
      }
      sighting = Optional.of(inSight.overhauledAt(clock));
    }
  }

  /** Only now, since ages stated later date what was seen before. */
  private void enter(Seen visit) {
    if (visit.visit().isObserved()) {
      List<PartState> states = visit.parts().stream().map(SeenPart::state).toList();
      workbook.add(visit.visit(), Optional.of(item), states);
    }
  }

  private void stay(Position position, Sighting inSight) {
    MachineId machine = position.machine();
    workbook.add(position, shutParts(inSight));
    stop(inSight, LifeEnd.STILL_FITTED, machine);
    addInterval(inSight, Optional.empty(), machine);
    sighting = Optional.empty();
  }

  private List<ShutPart> shutParts(Sighting inSight) {
    return component.parts().stream()
        .filter(Part::isSeenOnlyOpened)
        .map(part -> shutPart(part, Optional.ofNullable(openings.get(part)), inSight.since()))
        .toList();
  }

  private ShutPart shutPart(Part part, Optional<Opening> opening, RunningHours since) {
    return new ShutPart(
        part, opening.map(Opening::at), clock.minus(opening.map(Opening::clock).orElse(since)));
  }

  /** Straight after its overhaul, an item on the shelf has no interval running. */
  private void shelve(MachineId machine, Sighting inSight) {
    stop(inSight, LifeEnd.ON_SHELF, machine);
    if (inSight.hasRunSinceOverhaul(clock)) {
      addInterval(inSight, Optional.empty(), machine);
    }
  }

  private void loseSight(MachineId machine) {
    sighting.ifPresent(inSight -> stop(inSight, LifeEnd.LOST_SIGHT, machine));
    sighting = Optional.empty();
    openings.clear();
  }

  private void stop(Sighting inSight, LifeEnd endedBy, MachineId machine) {
    for (PartLedger part : inSight.parts()) {
      part.stop(endedBy, clock).ifPresent(end -> addLife(part, end, machine));
    }
  }

  /** A life that ended by the start of observation counts nowhere. */
  private void addLife(PartLedger part, EndOfLife end, PlacedVisit visit) {
    if (visit.isObserved()) {
      addLife(part, end, visit.overhaul().machine());
    }
  }

  private void addLife(PartLedger part, EndOfLife end, MachineId machine) {
    int number = lives.merge(part.part(), 1, Integer::sum);
    workbook.add(
        machine,
        new PartLife(
            component,
            item,
            part.part(),
            number,
            end.origin(),
            end.entry(),
            end.observation(),
            end.endedBy()));
  }

  private void addInterval(Sighting inSight, Optional<Reason> endedBy, MachineId machine) {
    workbook.add(
        machine,
        new OverhaulInterval(component, Subject.ITEM, inSight.sinceOverhaul(clock), endedBy));
  }

  /**
   * An item in sight.
   *
   * @param since the clock when it came into sight
   * @param overhauledAt the clock at its last overhaul or when it was new; none where not known
   */
  private record Sighting(
      List<PartLedger> parts, RunningHours since, Optional<RunningHours> overhauledAt) {

    static Sighting begin(Component component, RunningHours now, Optional<RunningHours> age) {
      return new Sighting(
          component.parts().stream()
              .map(part -> PartLedger.firstSeen(part, component.halfInterval(), now, age))
              .toList(),
          now,
          age.map(now::minus));
    }

    Sighting overhauledAt(RunningHours now) {
      return new Sighting(parts, since, Optional.of(now));
    }

    Optional<RunningHours> sinceOverhaul(RunningHours now) {
      return overhauledAt.map(now::minus);
    }

    boolean hasRunSinceOverhaul(RunningHours now) {
      return now.isAbove(overhauledAt.orElse(since));
    }
  }

  private record Opening(Instant at, RunningHours clock) {}

  private record Seen(PlacedVisit visit, List<SeenPart> parts) {}

  private record SeenPart(PartFinding finding, PartAge age, RunningHours at) {
    PartState state() {
      return finding.stateAt(age.at(at));
    }
  }
}
