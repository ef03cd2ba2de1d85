package leadline.history;

import static leadline.history.Ship.at;
import static leadline.history.Ship.because;
import static leadline.history.Ship.fitted;
import static leadline.history.Ship.fittedOn;
import static leadline.history.Ship.newOnDayZero;
import static leadline.history.Ship.removed;
import static leadline.history.Ship.tenHoursADay;
import static leadline.history.Ship.tested;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leadline.fleet.Reason;
import leadline.fleet.TestResult;
import leadline.history.OverhaulInterval.Subject;
import org.junit.jupiter.api.Test;

/**
 * Intervals on both clocks, at an engine of four injector positions and ten hours a day. {@code ?}
 * is an interval whose start was not seen, {@code ...} one that still runs.
 */
class OverhaulIntervalTest {

  @Test
  void aPositionRunsFromOverhaulToOverhaulWhateverItemIsThere() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 300, removed("A"), fitted("B"))
            .overhaul("O2", 1100, because(Reason.BREAKDOWN), removed("B"), fitted("C"));
    assertEquals(
        List.of("8000 breakdown", "9000 ...", "? ...", "? ...", "? ...", "? planned"),
        ship.rebuilt().intervals(Subject.POSITION));
  }

  @Test
  void aKnownNewPositionsFirstIntervalHasAStart() {
    Ship ship = newOnDayZero().overhaul("O1", 700, because(Reason.CONDITION));
    assertEquals(
        List.of("13000 ...", "20000 ...", "20000 ...", "20000 ...", "7000 condition"),
        ship.rebuilt().intervals(Subject.POSITION));
  }

  @Test
  void aPositionsClockRunsWhileNothingIsFittedAnItemsDoesNot() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 300, removed("A"), fitted("A"), fittedOn(400))
            .overhaul("O2", 1100, removed("A"), fitted("B"));
    assertEquals(
        List.of("8000 planned", "9000 ...", "? ...", "? ...", "? ...", "? planned"),
        ship.rebuilt().intervals(Subject.POSITION));
    assertEquals(
        List.of("7000 planned", "? ...", "? ...", "? ...", "? ...", "? planned"),
        ship.rebuilt().intervals(Subject.ITEM));
  }

  @Test
  void anItemsIntervalGoesOnThroughATestAndTheShelf() {
    // A: overhauled on day 200, fitted on day 300, out for a test on day 500 and swapped, fitted
    // at 2/1 on day 900, overhauled on day 1500: 2,000 + 6,000 h.
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 200, at(1, 2), removed("A"), fitted("X"))
            .overhaul("O2", 300, removed("B"), fitted("A"))
            .overhaul("T1", 500, tested(TestResult.PASSED), removed("A"), fitted("B"))
            .overhaul("O3", 900, at(2, 1), removed("C"), fitted("A"))
            .overhaul("O4", 1500, at(2, 1), removed("A"), fitted("C"));
    assertEquals(
        List.of(
            "15000 ...", // B, overhauled at O2, fitted since day 500
            "5000 ...", // C, overhauled at O3, fitted since day 1500
            "8000 planned", // A
            "? ...", // at 2/2
            "? ...", // X at 1/2
            "? planned", // A at O1
            "? planned", // B at O2
            "? planned"), // C at O3
        ship.rebuilt().intervals(Subject.ITEM));
  }

  @Test
  void anItemOnTheShelfRunsOnlyIfItRanSinceItsOverhaul() {
    // A overhauled on day 300, ran till a test on day 500, then swapped: 2,000 h on the shelf.
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 300, removed("A"), fitted("A"))
            .overhaul("T1", 500, tested(TestResult.PASSED), removed("A"), fitted("B"));
    assertEquals(
        List.of("2000 ...", "? ...", "? ...", "? ...", "? ...", "? planned"),
        ship.rebuilt().intervals(Subject.ITEM));
    // Straight from its overhaul to the shelf: no interval of A runs.
    Ship shelved = tenHoursADay().overhaul("O1", 300, removed("A"), fitted("B"));
    assertEquals(
        List.of("? ...", "? ...", "? ...", "? ...", "? planned"),
        shelved.rebuilt().intervals(Subject.ITEM));
  }

  @Test
  void aTestEndsNothing() {
    Ship ship = newOnDayZero().overhaul("T1", 700, tested(TestResult.FAILED));
    assertEquals(
        List.of("20000 ...", "20000 ...", "20000 ...", "20000 ..."),
        ship.rebuilt().intervals(Subject.POSITION));
    assertEquals(
        List.of("20000 ...", "20000 ...", "20000 ...", "20000 ..."),
        ship.rebuilt().intervals(Subject.ITEM));
  }

  @Test
  void anItemLostToSightHasNoIntervalRunning() {
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 500, removed("A"), fitted("B"))
            .overhaul("O2", 900, removed("D"), fitted("D"));
    assertEquals(
        List.of("11000 ...", "20000 ...", "20000 ...", "20000 ...", "5000 planned", "? planned"),
        ship.rebuilt().intervals(Subject.ITEM));
  }

  @Test
  void anOverhaulAtTheCutOffLeavesAnIntervalOfNoLengthRunning() {
    Ship ship = newOnDayZero().overhaul("O1", 500);
    assertEquals(
        List.of("0 ...", "5000 ...", "5000 ...", "5000 ...", "5000 planned"),
        ship.rebuiltTo(500).intervals(Subject.POSITION));
  }

  @Test
  void anOverhaulOfAnUnknownPositionEndsNoInterval() {
    Ship ship = newOnDayZero().overhaul("O1", 500, at(9, 1));
    assertEquals(
        List.of("20000 ...", "20000 ...", "20000 ...", "20000 ..."),
        ship.rebuilt().intervals(Subject.POSITION));
  }
}
