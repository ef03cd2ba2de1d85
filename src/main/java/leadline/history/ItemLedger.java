package leadline.history;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.fleet.Item;
import leadline.fleet.MachineId;
import leadline.fleet.Part;
import leadline.fleet.Reason;
import leadline.history.OverhaulInterval.Subject;
import leadline.history.PartLedger.EndOfLife;
import leadline.history.PositionStanding.ShutPart;
import leadline.history.SeenVisit.SeenPart;
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
  private final List<SeenVisit> seen = new ArrayList<>();
  private final Map<Part, Opening> openings = new HashMap<>();
  private final Map<Part, PartNotes> notes = new HashMap<>();

  private RunningHours clock = RunningHours.ZERO;
  private Optional<PlacedVisit> removal = Optional.empty();
  private Optional<Sighting> sighting = Optional.empty();

  private ItemLedger(Item item, Component component, Workbook workbook) {
    this.item = item;
    this.component = component;
    this.workbook = workbook;
  }

  static void follow(ItemRecord record, Component component, Workbook workbook) {
    ItemLedger ledger = new ItemLedger(record.item(), component, workbook);
    Deque<PlacedVisit> workshop = new ArrayDeque<>(record.workshop());
    for (Stint stint : record.stints()) {
      while (!workshop.isEmpty() && workshop.element().removedAt().isBefore(stint.to())) {
        ledger.visitInWorkshop(workshop.remove());
      }
      ledger.follow(stint);
    }
    workshop.forEach(ledger::visitInWorkshop);
    ledger.sighting.ifPresent(inSight -> ledger.shelve(record, inSight));
    ledger.seen.forEach(ledger::enter);
  }

  private void follow(Stint stint) {
    MachineId machine = stint.position().machine();
    removal = Optional.empty();
    if (stint.run().isPresent() || stint.ending() instanceof Ending.OutOfSight) {
      inSight(stint.beginning(), stint.from());
    }
    if (stint.run().isEmpty()) {
      loseSight(machine, stint.to());
    }
    clock = clock.plus(stint.run().orElse(RunningHours.ZERO));
    if (stint.ending() instanceof Ending.Removed removed) {
      visit(removed.visit(), inSight(new Beginning.Unseen(), stint.to()));
      removal = Optional.of(removed.visit());
    } else if (stint.ending() instanceof Ending.StillFitted) {
      stay(stint, inSight(new Beginning.Unseen(), stint.to()));
    }
  }

  /** The item as it is in sight; from now on, if it was not. */
  private Sighting inSight(Beginning beginning, Instant at) {
    Sighting inSight = sighting.orElseGet(() -> begin(beginning, at));
    sighting = Optional.of(inSight);
    return inSight;
  }

  private Sighting begin(Beginning beginning, Instant at) {
    component.parts().forEach(part -> notes.put(part, PartNotes.from(at)));
    return Sighting.begin(component, clock, beginning.age());
  }

  /**
   * The item has the hours of its removal. What the workshop finds of an item that an overhaul
   * removed is the rest of that overhaul.
   */
  private void visitInWorkshop(PlacedVisit visit) {
    Sighting inSight = inSight(new Beginning.Unseen(), visit.removedAt());
    if (visit.isOverhaul() && removal.filter(PlacedVisit::isCountedOverhaul).isPresent()) {
      SeenVisit overhaul = seen.remove(seen.size() - 1);
      seen.add(overhaul.and(witness(visit, inSight)));
      return;
    }
    visit(
        removal
            .filter(out -> out.overhaul().machine().equals(visit.overhaul().machine()))
            .map(out -> visit.withHours(out.hours()))
            .orElse(visit),
        inSight);
    removal = Optional.of(visit);
  }

  private void visit(PlacedVisit visit, Sighting inSight) {
    seen.add(new SeenVisit(visit, witness(visit, inSight)));
    if (visit.isOverhaul()) {
      if (visit.isObserved()) {
        addInterval(
            inSight,
            visit.overhaul().machine(),
            visit.removedAt(),
            Optional.of(visit.overhaul().reason()));
      }
      sighting = Optional.of(inSight.overhauledAt(clock));
    }
  }

  private List<SeenPart> witness(PlacedVisit visit, Sighting inSight) {
    List<SeenPart> seenParts = new ArrayList<>();
    for (PartLedger part : inSight.parts()) {
      PartFinding finding = workbook.finding(visit, part.part());
      seenParts.add(new SeenPart(finding, part.age(), clock));
      workbook.compareAges(item, finding, part.age().at(clock));
      if (finding.inspection() instanceof Inspection.Opened || finding.isRenewed()) {
        openings.put(part.part(), new Opening(visit.removedAt(), clock));
      }
      notes.computeIfPresent(part.part(), (same, before) -> before.and(visit, finding));
      finding.hoursSinceNew().ifPresent(age -> part.dateFrom(age, clock));
      Evidence evidence = Evidence.of(visit, finding);
      part.witness(evidence, clock).ifPresent(end -> addLife(part, end, visit));
      if (finding.isRenewed()) {
        part.renew(evidence, clock).ifPresent(end -> addLife(part, end, visit));
      }
    }
    return seenParts;
  }

  /** Only now, since ages stated later date what was seen before. */
  private void enter(SeenVisit visit) {
    if (visit.visit().isObserved()) {
      List<PartState> states = visit.parts().stream().map(SeenPart::state).toList();
      workbook.add(visit.visit(), Optional.of(item), states);
    }
  }

  private void stay(Stint stint, Sighting inSight) {
    MachineId machine = stint.position().machine();
    workbook.add(stint.position(), shutParts(inSight), standings(inSight));
    stop(inSight, LifeEnd.STILL_FITTED, machine, stint.to());
    addInterval(inSight, machine, stint.to(), Optional.empty());
    sighting = Optional.empty();
  }

  private List<ShutPart> shutParts(Sighting inSight) {
    return component.parts().stream()
        .filter(Part::isSeenOnlyOpened)
        .map(part -> shutPart(part, Optional.ofNullable(openings.get(part)), inSight.since()))
        .toList();
  }

  private List<PartStanding> standings(Sighting inSight) {
    return inSight.parts().stream()
        .map(part -> java.util.Objects.requireNonNull(notes.get(part.part())).standing(part, clock))
        .toList();
  }

  private ShutPart shutPart(Part part, Optional<Opening> opening, RunningHours since) {
    return new ShutPart(
        part, opening.map(Opening::at), clock.minus(opening.map(Opening::clock).orElse(since)));
  }

  /** Straight after its overhaul, an item on the shelf has no interval running. */
  private void shelve(ItemRecord record, Sighting inSight) {
    MachineId machine = record.lastMachine();
    Instant until = record.last().map(PlacedVisit::removedAt).orElseThrow();
    stop(inSight, LifeEnd.ON_SHELF, machine, until);
    if (inSight.hasRunSinceOverhaul(clock)) {
      addInterval(inSight, machine, until, Optional.empty());
    }
  }

  private void loseSight(MachineId machine, Instant at) {
    sighting.ifPresent(inSight -> stop(inSight, LifeEnd.LOST_SIGHT, machine, at));
    sighting = Optional.empty();
    openings.clear();
  }

  private void stop(Sighting inSight, LifeEnd endedBy, MachineId machine, Instant at) {
    for (PartLedger part : inSight.parts()) {
      part.stop(endedBy, clock).ifPresent(end -> addLife(part, end, machine, at));
    }
  }

  /** A life that ended by the start of observation counts nowhere. */
  private void addLife(PartLedger part, EndOfLife end, PlacedVisit visit) {
    if (visit.isObserved()) {
      addLife(part, end, visit.overhaul().machine(), visit.removedAt());
    }
  }

  private void addLife(PartLedger part, EndOfLife end, MachineId machine, Instant until) {
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
            until,
            end.endedBy()));
  }

  private void addInterval(
      Sighting inSight, MachineId machine, Instant until, Optional<Reason> endedBy) {
    workbook.add(
        machine,
        new OverhaulInterval(
            component, Subject.ITEM, inSight.sinceOverhaul(clock), until, endedBy));
  }

  private record Opening(Instant at, RunningHours clock) {}
}
