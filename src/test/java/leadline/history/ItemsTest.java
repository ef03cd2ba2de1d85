package leadline.history;

import static leadline.history.Ship.at;
import static leadline.history.Ship.because;
import static leadline.history.Ship.endOf;
import static leadline.history.Ship.fitted;
import static leadline.history.Ship.fittedOn;
import static leadline.history.Ship.hours;
import static leadline.history.Ship.hoursSinceNew;
import static leadline.history.Ship.machineHours;
import static leadline.history.Ship.newOnDayZero;
import static leadline.history.Ship.opened;
import static leadline.history.Ship.removed;
import static leadline.history.Ship.tenHoursADay;
import static leadline.history.Ship.tested;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.TestResult;
import org.junit.jupiter.api.Test;

/**
 * Items through their stints. That spare injectors rotate and that hours follow the serial, not the
 * position, is common practice, no source. The engine runs ten hours a day; the spindle guide
 * always shows its failure, so that its life tells the item's age.
 */
class ItemsTest {

  private static final String GUIDE = "spindle-guide";

  @Test
  void aSpareRotatedInAndOutAgesOnlyWhileFitted() {
    // A new at day 0, out on day 800 (8,000 h) with a new guide, on the shelf till day 1000, then
    // in at 2/1 and out on day 1500: 5,000 h.
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 800, removed("A"), fitted("B"))
            .finding("O1", GUIDE, opened(FoundWord.WORN, Action.RENEWED))
            .overhaul("O2", 1000, at(2, 1), removed("C"), fitted("A"))
            .overhaul("O3", 1500, at(2, 1), removed("A"), fitted("C"))
            .finding("O3", GUIDE, opened(FoundWord.STUCK, Action.RENEWED));
    assertEquals(
        List.of(
            "1 new from 0: rejected at 8000, rejected",
            "2 renewed from 0: failed at 5000, failed",
            "3 renewed from 0: working at 0, on-shelf"),
        ship.rebuilt().lives("A", GUIDE));
    assertEquals(hours(5000), ship.rebuilt().state("O3", GUIDE).age().orElseThrow());
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void anItemMayMoveToAnotherMachineOfItsModel() {
    // On the engine from day 0 to 800 (8,000 h), then on its sister, five hours a day, from day 900
    // to 1,300 (2,000 h).
    Ship ship =
        newOnDayZero()
            .machine("ME2")
            .reading("ME2", ReadingKind.COUNTER, endOf(0), 70_000)
            .reading("ME2", ReadingKind.COUNTER, endOf(2000), 80_000)
            .overhaul("O1", 800, removed("A"), fitted("B"))
            .overhaul("O2", 900, onSister(), removed("Z"), fitted("A"))
            .overhaul("O3", 1300, onSister(), removed("A"), fitted("Z"));
    assertEquals(
        List.of("1 new from 0: working at 10000, on-shelf"), ship.rebuilt().lives("A", GUIDE));
    assertTrue(
        ship.rebuilt().machine("ME2").lives().stream()
            .anyMatch(life -> life.item().label().equals("A")));
  }

  @Test
  void withoutSerialsTheItemAtThePositionIsRefittedAtEachOverhaul() {
    Ship ship = newOnDayZero().overhaul("O1", 800).overhaul("O2", 1600);
    assertEquals(
        List.of("1 new from 0: working at 20000, still-fitted"),
        ship.rebuilt().lives("@1/1", GUIDE));
    assertEquals("@1/1", ship.rebuilt().visit("O2").removed().orElseThrow().label());
  }

  @Test
  void afterANamedItemAnUnnamedOneIsAnother() {
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 500, fitted("A"))
            .overhaul("O2", 900, removed("A"))
            .overhaul("O3", 1300);
    assertEquals(
        List.of("1 new from 0: working at 5000, on-shelf"), ship.rebuilt().lives("@1/1", GUIDE));
    assertEquals(
        List.of("1 unknown from 0: no age, still-fitted"), ship.rebuilt().lives("@1/1#2", GUIDE));
  }

  @Test
  void aSerialIsInferredFromTheNextRemoval() {
    // O1 fits A, since O2 removes it: 4,000 h between, known from a new guide at O0.
    Ship ship =
        newOnDayZero()
            .overhaul("O0", 300, at(2, 2), removed("A"), fitted("B"))
            .overhaul("O1", 500)
            .overhaul("O2", 900, removed("A"), fitted("C"));
    assertEquals(
        List.of("1 new from 0: working at 7000, on-shelf"), ship.rebuilt().lives("A", GUIDE));
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void theFirstRemovalNamesWhatWasThereFromTheStart() {
    Ship ship = newOnDayZero().overhaul("O1", 800, removed("A"), fitted("B"));
    assertEquals(
        List.of("1 new from 0: working at 8000, on-shelf"), ship.rebuilt().lives("A", GUIDE));
    assertEquals(
        List.of("1 unknown from 0: no age, still-fitted"), ship.rebuilt().lives("B", GUIDE));
  }

  @Test
  void aTestRefitsWhatItRemovesAndIsLookedThroughForSerials() {
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 300, tested(TestResult.PASSED))
            .overhaul("O2", 600, tested(TestResult.PASSED), removed("A"))
            .overhaul("O3", 900, removed("A"), fitted("B"));
    assertEquals(
        List.of("1 new from 0: working at 9000, on-shelf"), ship.rebuilt().lives("A", GUIDE));
    assertEquals("A", ship.rebuilt().visit("O1").removed().orElseThrow().label());
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void removedNotFittedTheBelievedIsLostWhenFittedAndTheRemovedIsOfUnknownAge() {
    // B ran 3,000 h at 2/1 before it was fitted at 1/1 on day 500; then D came out there.
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 300, at(2, 1), removed("B"), fitted("C"))
            .overhaul("O2", 500, removed("A"), fitted("B"))
            .overhaul("O3", 900, removed("D"), fitted("E"))
            .finding("O3", GUIDE, opened(FoundWord.STUCK, Action.RENEWED));
    assertEquals(
        List.of("1 new from 0: working at 3000, lost-sight"), ship.rebuilt().lives("B", GUIDE));
    assertEquals(
        List.of("1 unknown from 0: no age, failed", "2 renewed from 0: working at 0, on-shelf"),
        ship.rebuilt().lives("D", GUIDE));
    assertEquals(Optional.empty(), ship.rebuilt().state("O3", GUIDE).age());
    assertEquals(List.of("removed-not-fitted O3"), ship.rebuilt().problems());
    assertTrue(
        ship.rebuilt()
            .sentences()
            .get(0)
            .startsWith(
                "D was removed from hesper-lark/ME fuel-injector 1/1, where B is on record"));
  }

  @Test
  void anItemThatTurnsUpUnseenLosesTheAgeItHad() {
    // B, new and 3,000 h old, waits on the shelf; then it comes out of 1/1 where A was fitted.
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 300, at(2, 1), removed("B"), fitted("C"))
            .overhaul("O2", 500, removed("A"), fitted("D"))
            .overhaul("O3", 900, removed("B"), fitted("E"))
            .finding("O3", GUIDE, opened(FoundWord.SOUND, Action.NONE));
    assertEquals(
        List.of("1 new from 0: working at 3000, lost-sight", "2 unknown from 0: no age, on-shelf"),
        ship.rebuilt().lives("B", GUIDE));
  }

  @Test
  void aStatedAgeDatesAnItemThatTurnedUpUnseen() {
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 500, removed("A"), fitted("D"))
            .overhaul("O2", 900, removed("B"), fitted("B"))
            .finding("O2", GUIDE, hoursSinceNew(12_000));
    // 12,000 h old on day 900, and 11,000 h more to day 2000.
    assertEquals(
        List.of("1 hours-since-new from 12000: working at 23000, still-fitted"),
        ship.rebuilt().lives("B", GUIDE));
  }

  @Test
  void anItemAtTwoPositionsAtOnceIsTrustedAtNeither() {
    // A is fitted at 1/1 from day 500 and, without having come out, at 2/1 from day 700.
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 300, at(1, 2), removed("A"), fitted("B"))
            .overhaul("O2", 500, removed("C"), fitted("A"))
            .overhaul("O3", 700, at(2, 1), removed("D"), fitted("A"))
            .overhaul("O4", 900, removed("A"), fitted("E"))
            .overhaul("O5", 1100, at(2, 1), removed("A"), fitted("F"));
    assertEquals(
        List.of(
            "1 new from 0: working at 3000, lost-sight",
            "2 unknown from 0: no age, lost-sight",
            "3 unknown from 0: no age, on-shelf"),
        ship.rebuilt().lives("A", GUIDE));
    assertEquals(List.of("in-two-places O3"), ship.rebuilt().problems());
    assertTrue(
        ship.rebuilt()
            .sentences()
            .get(0)
            .contains("1/1 (fitted by overhaul O2, removed by overhaul O4 on 2022-06-19)"));
  }

  @Test
  void anItemOutAndInElsewhereTheSameDayIsAtOnePlaceOnly() {
    // O1 removes B at 2/1; O0, of the same day and earlier by identifier, fits it at 1/1.
    Ship ship =
        newOnDayZero()
            .overhaul("O0", 500, removed("A"), fitted("B"))
            .overhaul("O1", 500, at(2, 1), removed("B"), fitted("A"))
            .overhaul("O2", 900, removed("B"), fitted("C"));
    assertEquals(
        List.of("1 new from 0: working at 9000, on-shelf"), ship.rebuilt().lives("B", GUIDE));
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void overhaulsOfOneDayAtOnePositionAreTakenByIdentifier() {
    Ship ship =
        newOnDayZero()
            .overhaul("O2", 500, removed("B"), fitted("C"))
            .overhaul("O1", 500, removed("A"), fitted("B"))
            .overhaul("O3", 900, removed("C"), fitted("A"));
    assertEquals(List.of("O1", "O2", "O3"), ship.rebuilt().visits());
    assertEquals(List.of(), ship.rebuilt().problems());
    assertEquals(List.of("1 unknown from 0: no age, on-shelf"), ship.rebuilt().lives("B", GUIDE));
  }

  @Test
  void fittedLaterThanRemovedNoItemRunsInBetween() {
    // Out on day 500 at 5,000 h, in again on day 530, out on day 900: 3,700 h.
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 500, removed("A"), fitted("A"), fittedOn(530))
            .finding("O1", GUIDE, opened(FoundWord.WORN, Action.RENEWED))
            .overhaul("O2", 900, removed("A"), fitted("B"));
    assertEquals(
        List.of(
            "1 new from 0: rejected at 5000, rejected",
            "2 renewed from 0: working at 3700, on-shelf"),
        ship.rebuilt().lives("A", GUIDE));
  }

  @Test
  void fittedAfterTheNextRemovalAnItemRanNotAtAll() {
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 500, removed("A"), fitted("B"), fittedOn(950))
            .finding("O1", GUIDE, hoursSinceNew(5000))
            .overhaul("O2", 900, removed("B"), fitted("C"))
            .finding("O2", GUIDE, hoursSinceNew(100));
    assertEquals(
        List.of("1 hours-since-new from 100: working at 100, on-shelf"),
        ship.rebuilt().lives("B", GUIDE));
    assertEquals(hours(9000), ship.rebuilt().visit("O2").machineHours());
  }

  @Test
  void anItemToBeFittedAfterTheCutOffIsOnTheShelf() {
    Ship ship = newOnDayZero().overhaul("O1", 500, removed("A"), fitted("A"), fittedOn(700));
    assertEquals(
        List.of("1 new from 0: working at 5000, on-shelf"), ship.rebuiltTo(600).lives("A", GUIDE));
  }

  @Test
  void fittedBeforeRemovedCountsAsFittedAtTheRemoval() {
    Ship ship = newOnDayZero().overhaul("O1", 500, removed("A"), fitted("A"), fittedOn(400));
    assertEquals(
        List.of("1 new from 0: working at 20000, still-fitted"), ship.rebuilt().lives("A", GUIDE));
  }

  @Test
  void knownNewOnlyIfObservedFromTheFirstDayInService() {
    Ship later =
        new Ship()
            .engine(row -> row.with(MachineLayout.IN_SERVICE_ON, Ship.day(0)))
            .counter(1, 10)
            .counter(2000, 20_000);
    assertEquals(
        List.of("1 unknown from 0: no age, still-fitted"), later.rebuilt().lives("@1/1", GUIDE));
    assertEquals(
        List.of("1 unknown from 0: no age, still-fitted"),
        tenHoursADay().rebuilt().lives("@1/1", GUIDE));
  }

  @Test
  void anItemIsNewAtTheFirstReadingThoughRecordsBeginLater() {
    // Readings from day -20, 200 h before the day in service; records from day 0.
    Ship ship =
        new Ship()
            .engine(
                row -> row.with(MachineLayout.IN_SERVICE_ON, Ship.day(0)),
                row -> row.with(MachineLayout.RECORDS_FROM, Ship.day(0)))
            .counter(-21, 50)
            .counter(-1, 250)
            .counter(99, 1250)
            .overhaul("O1", 99);
    // 200 h by the end of day -1, when observation begins, and 1,000 h since.
    assertEquals(hours(1200), ship.rebuilt().state("O1", GUIDE).age().orElseThrow());
  }

  @Test
  void whatWasOverhauledBeforeObservationIsNotKnownNew() {
    Ship ship =
        new Ship()
            .engine(row -> row.with(MachineLayout.IN_SERVICE_ON, Ship.day(0)))
            .counter(0, 0)
            .counter(2000, 20_000)
            .overhaul("O1", -1, because(Reason.CONDITION));
    assertEquals(
        List.of("1 unknown from 0: no age, still-fitted"), ship.rebuilt().lives("@1/1", GUIDE));
    assertEquals(
        List.of("1 new from 0: working at 20000, still-fitted"),
        ship.rebuilt().lives("@1/2", GUIDE));
  }

  @Test
  void theMachineHoursOfAnOverhaulAreTheItemsToo() {
    // Monthly readings; the sheet says 5,010 where the series says 5,000.
    Ship ship = newOnDayZero().overhaul("O1", 500, removed("A"), fitted("B"), machineHours(5010));
    assertEquals(
        List.of("1 new from 0: working at 5010, on-shelf"), ship.rebuilt().lives("A", GUIDE));
  }

  @Test
  void everyPositionHasAnItemWithALifeOfEachPart() {
    Rebuilt rebuilt = tenHoursADay().rebuilt();
    assertEquals(List.of("@1", "@1/1", "@1/2", "@2", "@2/1", "@2/2"), rebuilt.items());
    assertEquals(4 * 11 + 2 * 5, rebuilt.lives().count());
    assertFalse(
        rebuilt.lives().anyMatch(life -> !(life.observation() instanceof Observation.NoAge)));
  }

  private static Ship.Fill onSister() {
    return row -> row.with(OverhaulLayout.MACHINE, "ME2");
  }
}
