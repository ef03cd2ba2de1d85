package leadline.summary;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import leadline.fleet.Action;
import leadline.fleet.Component;
import leadline.fleet.FoundWord;
import leadline.fleet.Item;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulId;
import leadline.fleet.Part;
import leadline.fleet.Reason;
import leadline.history.Condition;
import leadline.history.HourSeries;
import leadline.history.Inspection;
import leadline.history.LifeEnd;
import leadline.history.LifeOrigin;
import leadline.history.MachineHistory;
import leadline.history.Observation;
import leadline.history.OverhaulInterval;
import leadline.history.PartLife;
import leadline.history.PartState;
import leadline.history.PositionStanding;
import leadline.history.SteadyHours;
import leadline.history.VesselHistory;
import leadline.history.Visit;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.quantity.Days;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/** A machine's history written by hand. Its hours are the one place that knows of a series. */
final class TestMachine {

  private static final Origin ORIGIN = new Origin("by-hand.csv", FileDigest.of(new byte[] {1}), 2);

  private static final Instant UNTIL = Instant.parse("2024-01-01T00:00:00Z");

  private final MachineEntry entry;
  private final List<Visit> visits = new ArrayList<>();
  private final List<OverhaulInterval> intervals = new ArrayList<>();
  private final List<PartLife> lives = new ArrayList<>();
  private final List<PositionStanding> positions = new ArrayList<>();
  private Optional<Period> observed = Optional.empty();
  private HourSeries hours = SteadyHours.of(0, 0);

  private TestMachine(MachineEntry entry) {
    this.entry = entry;
  }

  /** A main engine of so many cylinders with two injectors each. */
  static TestMachine engine(String vessel, String model, int cylinders) {
    return of(vessel, "me", "main-engine", model, cylinders);
  }

  static TestMachine compressor(String vessel, String machine, String model) {
    return of(vessel, machine, "air-compressor", model, 0);
  }

  private static TestMachine of(
      String vessel, String machine, String kind, String model, int cylinders) {
    return new TestMachine(
        new MachineEntry(
            new MachineId(vessel, machine),
            kind,
            model,
            cylinders,
            2,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            ORIGIN));
  }

  /** Observed from 24:00 UTC of one day to 24:00 UTC of another. */
  TestMachine observed(String afterDay, String toDay) {
    observed =
        Optional.of(
            new Period(Days.endOf(LocalDate.parse(afterDay)), Days.endOf(LocalDate.parse(toDay))));
    return this;
  }

  TestMachine running(long hoursADay) {
    return running(hoursADay, 0);
  }

  TestMachine running(long hoursADay, long repairedHoursADay) {
    hours = SteadyHours.of(hoursADay, repairedHoursADay);
    return this;
  }

  /** A visit without a stated position; parts of which nothing is given have no finding. */
  TestMachine visit(Component component, String day, Reason reason, PartState... states) {
    Map<Part, PartState> given =
        Arrays.stream(states).collect(Collectors.toMap(PartState::part, Function.identity()));
    LocalDate date = LocalDate.parse(day);
    Overhaul overhaul =
        new Overhaul(
            new OverhaulId(entry.id().vessel(), "o" + visits.size()),
            entry.id(),
            component.name(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            date,
            date,
            Optional.empty(),
            reason,
            Optional.empty(),
            ORIGIN);
    visits.add(
        new Visit(
            overhaul,
            component,
            Optional.empty(),
            Optional.empty(),
            overhaul.removedAt(),
            RunningHours.ZERO,
            component.parts().stream()
                .map(part -> given.getOrDefault(part, silent(part)))
                .toList()));
    return this;
  }

  TestMachine visits(
      int times, Component component, String day, Reason reason, PartState... states) {
    for (int time = 0; time < times; time++) {
      visit(component, day, reason, states);
    }
    return this;
  }

  TestMachine completed(Component component, Reason reason, long... lengths) {
    for (long length : lengths) {
      interval(component, Optional.of(RunningHours.ofHours(length)), Optional.of(reason));
    }
    return this;
  }

  TestMachine stillRunning(Component component, long... lengths) {
    for (long length : lengths) {
      interval(component, Optional.of(RunningHours.ofHours(length)), Optional.empty());
    }
    return this;
  }

  TestMachine startUnseen(Component component, Optional<Reason> endedBy) {
    return interval(component, Optional.empty(), endedBy);
  }

  TestMachine interval(
      Component component, Optional<RunningHours> length, Optional<Reason> endedBy) {
    intervals.add(
        new OverhaulInterval(component, OverhaulInterval.Subject.POSITION, length, UNTIL, endedBy));
    return this;
  }

  TestMachine itemInterval(Component component, long length, Reason endedBy) {
    intervals.add(
        new OverhaulInterval(
            component,
            OverhaulInterval.Subject.ITEM,
            Optional.of(RunningHours.ofHours(length)),
            UNTIL,
            Optional.of(endedBy)));
    return this;
  }

  /** A life known from new. */
  TestMachine life(Component component, Part part, Observation observation) {
    return lifeFrom(0, component, part, observation);
  }

  /** A life known only because the part lived beyond an age. */
  TestMachine lifeFrom(long hours, Component component, Part part, Observation observation) {
    lives.add(
        new PartLife(
            component,
            new Item.Named(entry.id().vessel(), component.name(), "any", "s" + lives.size()),
            part,
            1,
            LifeOrigin.RENEWED,
            RunningHours.ofHours(hours),
            observation,
            UNTIL,
            LifeEnd.STILL_FITTED));
    return this;
  }

  TestMachine position(PositionStanding standing) {
    positions.add(standing);
    return this;
  }

  MachineHistory history() {
    return new MachineHistory(entry, hours, observed, visits, intervals, lives, positions);
  }

  VesselHistory alone() {
    return new VesselHistory(entry.id().vessel(), List.of(history()));
  }

  static PartState opened(Part part, Condition condition, Action... actions) {
    return state(part, foundIn(part, condition), Optional.empty(), actions);
  }

  static PartState openedAt(long age, Part part, Condition condition, Action... actions) {
    return state(part, foundIn(part, condition), Optional.of(RunningHours.ofHours(age)), actions);
  }

  /** Opened and found in these words, the worst of which decides. */
  static PartState foundAt(long age, Part part, Condition condition, FoundWord... words) {
    return state(
        part,
        new Inspection.Opened(condition, Set.of(words)),
        Optional.of(RunningHours.ofHours(age)));
  }

  static Inspection foundIn(Part part, Condition condition) {
    FoundWord word =
        switch (condition) {
          case WORKING -> FoundWord.SOUND;
          case BEYOND_LIMIT -> Collections.min(part.beyondLimit());
          case FAILED -> Collections.min(part.failed());
          case MISSING -> FoundWord.MISSING;
        };
    return new Inspection.Opened(condition, Set.of(word));
  }

  static PartState notOpened(Part part, Action... actions) {
    return state(part, new Inspection.NotOpened(), Optional.empty(), actions);
  }

  static PartState notOpenedAt(long age, Part part) {
    return state(part, new Inspection.NotOpened(), Optional.of(RunningHours.ofHours(age)));
  }

  static PartState unstated(Part part, Action... actions) {
    return state(part, new Inspection.Unstated(), Optional.empty(), actions);
  }

  static PartState state(
      Part part, Inspection inspection, Optional<RunningHours> age, Action... actions) {
    return new PartState(part, inspection, age, Set.of(actions));
  }

  private static PartState silent(Part part) {
    return state(part, new Inspection.NoFinding(), Optional.empty());
  }
}
