package leadline.history;

import static leadline.history.Ship.action;
import static leadline.history.Ship.found;
import static leadline.history.Ship.inService;
import static leadline.history.Ship.opened;
import static leadline.history.Ship.tenHoursADay;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.Statement;
import leadline.fleet.Status;
import leadline.problem.Problem;
import org.junit.jupiter.api.Test;

/** What the ship is asked about its findings, and that each question says what would settle it. */
class FindingQuestionsTest {

  @Test
  void aFindingWithoutItsOverhaul() {
    Ship ship = tenHoursADay().finding("O9", "nozzle", opened(FoundWord.WORN, Action.NONE));
    assertAsked(ship, "finding-without-overhaul O9 nozzle", "Send that row.");
  }

  @Test
  void findingsOfACancelledOverhaulAreNotAskedAbout() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 500, row -> row.with(OverhaulLayout.STATUS, Status.CANCELLED))
            .finding("O1", "nozzle", opened(FoundWord.BLOCKED, Action.RENEWED));
    assertEquals(List.of(), ship.rebuilt().problems());
    assertEquals(
        List.of("1 unknown from 0: no age, still-fitted"), ship.rebuilt().lives("@1/1", "nozzle"));
  }

  @Test
  void aFindingOfAnOverhaulAfterTheCutOffIsNotYetAskedAbout() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 700)
            .finding("O1", "nozzle", opened(FoundWord.MISSING, Action.NONE));
    assertEquals(List.of(), ship.rebuiltTo(600).problems());
  }

  @Test
  void aPartThatTheComponentDoesNotHave() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 500)
            .finding("O1", "air-piston-seal", opened(FoundWord.WORN, Action.NONE));
    assertAsked(ship, "part-not-of-component O1 air-piston-seal", "Send the right part");
  }

  @Test
  void aConditionOfAPartNotSaidToBeOpened() {
    for (Ship.Fill opening : List.<Ship.Fill>of(row -> {}, opened(Statement.NO))) {
      Ship ship =
          tenHoursADay()
              .overhaul("O1", 500)
              .finding("O1", "nrv-spring", found(FoundWord.SOUND), opening);
      assertAsked(ship, "found-without-opened O1 nrv-spring", "Say whether it was opened.");
    }
  }

  @Test
  void aMissingPart() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 500)
            .finding("O1", "shims", opened(FoundWord.MISSING, Action.RENEWED));
    assertAsked(ship, "part-missing O1 shims", "left out when last assembled");
  }

  @Test
  void aFailureInServiceThatNothingMended() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 500)
            .finding("O1", "nozzle", found(FoundWord.LEAKING), inService());
    assertAsked(ship, "failed-and-untouched O1 nozzle", "was found leaking, and nothing");
  }

  @Test
  void aPartCuredOrRenewedIsNotAskedAbout() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 500)
            .finding("O1", "nozzle", opened(FoundWord.LEAKING, Action.LAPPED))
            .finding("O1", "cutoff-slide", opened(FoundWord.STUCK, Action.CLEANED))
            .finding("O1", "main-spring", opened(FoundWord.BROKEN, Action.RENEWED))
            .finding("O1", "foot", action(Action.RENEWED))
            .finding("O1", "nrv-spring", opened(Statement.NO));
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void everyProblemNamesItsVesselAndRow() {
    Ship ship = tenHoursADay().finding("O9", "nozzle", opened(FoundWord.WORN, Action.NONE));
    Problem problem = ship.rebuilt().checked().problems().get(0);
    assertEquals(Ship.VESSEL, problem.vessel());
    assertEquals(4, problem.origin().line()); // after the machine and two readings
  }

  private static void assertAsked(Ship ship, String problem, String settledBy) {
    assertEquals(List.of(problem), ship.rebuilt().problems());
    String sentence = ship.rebuilt().sentences().get(0);
    assertTrue(sentence.contains(settledBy), sentence);
  }
}
