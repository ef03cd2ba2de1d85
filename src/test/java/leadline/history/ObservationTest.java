package leadline.history;

import static leadline.history.Ship.action;
import static leadline.history.Ship.at;
import static leadline.history.Ship.day;
import static leadline.history.Ship.endOf;
import static leadline.history.Ship.fitted;
import static leadline.history.Ship.hours;
import static leadline.history.Ship.opened;
import static leadline.history.Ship.removed;
import static leadline.history.Ship.tenHoursADay;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.history.OverhaulInterval.Subject;
import leadline.quantity.Period;
import org.junit.jupiter.api.Test;

/** From when to when a machine is observed, and what becomes of records outside. */
class ObservationTest {

  @Test
  void observationRunsFromTheFirstReadingToTheCutOff() {
    assertEquals(
        Optional.of(new Period(endOf(0), endOf(500))),
        tenHoursADay().rebuiltTo(500).engine().observed());
  }

  @Test
  void itBeginsWithTheRecordsOrTheFleetAndEndsWithTheFleetOrTheReadings() {
    // The start of day 100 is the end of day 99; the last day in the fleet counts whole.
    Ship ship =
        tenHoursADay(
            row -> row.with(MachineLayout.RECORDS_FROM, day(100)),
            row -> row.with(MachineLayout.VALID_FROM, day(50)),
            row -> row.with(MachineLayout.VALID_TO, day(300)));
    assertEquals(
        Optional.of(new Period(endOf(99), endOf(300))), ship.rebuilt().engine().observed());
    assertEquals(
        Optional.of(new Period(endOf(0), endOf(2000))),
        tenHoursADay().rebuiltTo(3000).engine().observed());
  }

  @Test
  void aReadingAfterTheCutOffServesToInterpolate() {
    Ship ship = new Ship().engine().counter(0, 0).counter(10, 100).counter(20, 300);
    assertEquals(
        hours(200),
        ship.rebuiltTo(15).engine().exposureWithin(new Period(endOf(0), endOf(15))).hours());
  }

  @Test
  void anOverhaulAfterTheCutOffIsNotSeenAndAWrongReadingAfterItNotYetAsked() {
    Ship ship = tenHoursADay().counter(600, 5).overhaul("O1", 501);
    assertEquals(List.of(), ship.rebuiltTo(500).visits());
    assertEquals(List.of(), ship.rebuiltTo(500).problems());
  }

  @Test
  void anOverhaulBeforeTheFirstOrAfterTheLastReadingCountsNowhere() {
    Ship ship =
        new Ship()
            .engine()
            .counter(10, 100)
            .counter(20, 200)
            .overhaul("O1", 9)
            .overhaul("O2", 21)
            .finding("O2", "nozzle", opened(FoundWord.BLOCKED, Action.NONE));
    assertEquals(List.of(), ship.rebuilt().visits());
    assertEquals(
        List.of("overhaul-outside-hours O1", "overhaul-outside-hours O2"),
        ship.rebuilt().problems());
    assertTrue(ship.rebuilt().sentences().get(0).contains("only from 2020-01-11 to 2020-01-21"));
  }

  @Test
  void anOverhaulExactlyAtTheStartCountsNowhereButFixesWhatIsFittedSince() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 0, removed("A"), fitted("B"))
            .finding("O1", "nozzle", opened(FoundWord.WORN, Action.RENEWED))
            .overhaul("O2", 800, removed("B"))
            .finding("O2", "nozzle", opened(FoundWord.SOUND, Action.NONE));
    assertEquals(List.of("O2"), ship.rebuilt().visits());
    assertEquals(List.of("overhaul-outside-hours O1"), ship.rebuilt().problems());
    // A, on the shelf since, was given a new nozzle; the life that ended then is not counted.
    assertEquals(
        List.of("1 renewed from 0: working at 0, on-shelf"), ship.rebuilt().lives("A", "nozzle"));
    assertTrue(ship.rebuilt().intervals(Subject.POSITION).contains("8000 planned"));
  }

  @Test
  void anOverhaulExactlyAtTheEndCounts() {
    assertEquals(List.of("O1"), tenHoursADay().overhaul("O1", 500).rebuiltTo(500).visits());
  }

  @Test
  void aMachineWithOverhaulsButNoReadingsWasNeverObserved() {
    Ship ship = new Ship().engine().overhaul("O1", 10);
    assertEquals(Optional.empty(), ship.rebuilt().engine().observed());
    assertEquals(List.of("overhaul-outside-hours O1"), ship.rebuilt().problems());
    assertEquals(List.of(), ship.rebuilt().engine().intervals());
    assertEquals(
        Exposure.NONE, ship.rebuilt().engine().exposureWithin(new Period(endOf(0), endOf(500))));
  }

  @Test
  void recordsOfAnUnregisteredMachineAreReportedOnce() {
    Ship ship =
        tenHoursADay()
            .reading("AE3", ReadingKind.COUNTER, endOf(1), 10)
            .reading("AE3", ReadingKind.COUNTER, endOf(2), 20)
            .overhaul("O1", 5, row -> row.with(OverhaulLayout.MACHINE, "AE3"))
            .finding("O1", "nozzle", action(Action.RENEWED));
    assertEquals(List.of("unregistered-machine AE3"), ship.rebuilt().problems());
    assertTrue(ship.rebuilt().sentences().get(0).contains("readings 2, overhauls 1"));
    assertEquals(List.of(), ship.rebuilt().visits());
  }

  @Test
  void aComponentThatTheMachineDoesNotCarryCountsNowhere() {
    Ship ship =
        tenHoursADay()
            .machine("AE1", row -> row.with(MachineLayout.KIND, "generator-engine"))
            .reading("AE1", ReadingKind.COUNTER, endOf(0), 0)
            .reading("AE1", ReadingKind.COUNTER, endOf(2000), 100)
            .overhaul("O1", 5, row -> row.with(OverhaulLayout.MACHINE, "AE1"));
    assertEquals(List.of("component-not-on-machine O1"), ship.rebuilt().problems());
    assertEquals(List.of(), ship.rebuilt().machine("AE1").visits());
  }

  @Test
  void anOverhaulOfAnUnknownPositionIsAVisitWithoutPositionWhosePartsHaveNoAge() {
    Ship ship =
        Ship.newOnDayZero()
            .overhaul("O1", 800, at(3, 1))
            .finding("O1", "nozzle", opened(FoundWord.BLOCKED, Action.RENEWED));
    Visit visit = ship.rebuilt().visit("O1");
    assertEquals(Optional.empty(), visit.position());
    assertEquals(Optional.empty(), visit.removed());
    assertEquals(hours(8000), visit.machineHours());
    assertTrue(ship.rebuilt().state("O1", "nozzle").isFoundFailed());
    assertEquals(Optional.empty(), ship.rebuilt().state("O1", "nozzle").age());
    assertEquals(List.of("position-unknown O1"), ship.rebuilt().problems());
    assertTrue(ship.rebuilt().sentences().get(0).contains("unit 3 and place 1"));
  }

  @Test
  void aMissingPlaceIsUnknownUnlessTheCylinderHasOnlyOne() {
    Ship.Fill unitOnly =
        row -> row.with(OverhaulLayout.OVERHAUL, "O1").with(OverhaulLayout.UNIT, 2L);
    Ship onePlace =
        tenHoursADay(row -> row.with(MachineLayout.PLACES_PER_CYLINDER, 1L))
            .add(overhaulWithoutPlace(), unitOnly);
    assertEquals(1, onePlace.rebuilt().visit("O1").position().orElseThrow().place());
    Ship twoPlaces = tenHoursADay().add(overhaulWithoutPlace(), unitOnly);
    assertEquals(List.of("position-unknown O1"), twoPlaces.rebuilt().problems());
  }

  private static Cells.Builder overhaulWithoutPlace() {
    return Cells.of(RecordKind.OVERHAULS)
        .with(OverhaulLayout.VESSEL, Ship.VESSEL)
        .with(OverhaulLayout.MACHINE, Ship.ENGINE)
        .with(OverhaulLayout.COMPONENT, "fuel-injector")
        .with(OverhaulLayout.DONE_ON, day(100))
        .with(OverhaulLayout.REASON, Reason.PLANNED);
  }
}
