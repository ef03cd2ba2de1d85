package leadline.history;

import static leadline.history.Ship.at;
import static leadline.history.Ship.endOf;
import static leadline.history.Ship.opened;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.FoundWord;
import leadline.fleet.MovementLayout;
import leadline.fleet.RecordKind;
import leadline.problem.Problem;
import org.junit.jupiter.api.Test;

/**
 * Renewals against the stock log, by hand. The engine runs ten hours a day; nozzles are renewed at
 * overhauls of 1/1, and the window is 30 days.
 */
class SupplyQuestionsTest {

  private static Ship ship() {
    return Ship.tenHoursADay();
  }

  private static Ship renewed(Ship ship, String overhaul, int day, Ship.Fill... finding) {
    return ship.overhaul(overhaul, day, at(1, 1))
        .finding(
            overhaul,
            "nozzle",
            row -> opened(FoundWord.WORN, Action.RENEWED).in(row),
            row -> List.of(finding).forEach(fill -> fill.in(row)));
  }

  private static Ship moved(Ship ship, String name, int day, long quantity, Ship.Fill... cells) {
    return ship.add(
        Cells.of(RecordKind.MOVEMENTS)
            .with(MovementLayout.VESSEL, Ship.VESSEL)
            .with(MovementLayout.MOVEMENT, name)
            .with(MovementLayout.PART, "nozzle")
            .with(MovementLayout.MOVED_ON, Ship.day(day))
            .with(MovementLayout.QUANTITY, quantity),
        cells);
  }

  private static Ship.Fill used(String overhaul) {
    return row -> row.with(MovementLayout.OVERHAUL, overhaul);
  }

  private static Ship.Fill pieces(long fitted) {
    return row -> row.with(FindingLayout.FITTED_COUNT, fitted);
  }

  @Test
  void aVesselThatSendsNoMovementsIsNotAskedForThem() {
    assertAsked(renewed(ship(), "O1", 500));
  }

  @Test
  void aMovementWithinThirtyDaysOfTheRenewalAgreesWithIt() {
    assertAsked(moved(renewed(ship(), "O1", 500), "M1", 470, -1));
    assertAsked(moved(renewed(ship(), "O1", 500), "M1", 530, -1));
  }

  @Test
  void aMovementFartherThanThatWasForNothing() {
    // The renewal lies before the part's first movement: no log was kept then.
    Ship ship = moved(renewed(ship(), "O1", 500), "M1", 531, -1);
    assertAsked(ship, "movement-without-renewal M1 nozzle");
    assertEquals(Optional.of(endOf(561)), asked(ship, 1000).get(0).dueSince());
  }

  @Test
  void aRenewalWithinTheStockLogWithoutMovement() {
    Ship ship = renewed(renewed(ship(), "O1", 300), "O2", 500);
    moved(moved(ship, "M1", 300, -1, used("O1")), "M2", 700, 4);
    assertAsked(ship, "renewal-without-movement O2 nozzle");
    assertEquals(Optional.of(endOf(530)), asked(ship, 1000).get(0).dueSince());
  }

  @Test
  void aRenewalAfterTheLastMovementOfAllIsNotAskedAbout() {
    Ship ship = renewed(renewed(ship(), "O1", 300), "O2", 500);
    assertAsked(moved(ship, "M1", 300, -1, used("O1")));
  }

  @Test
  void aMovementThatNamesAnOverhaulWithoutRenewal() {
    Ship ship = ship().overhaul("O1", 300).finding("O1", "nozzle", opened(FoundWord.SOUND, Action.NONE));
    assertAsked(moved(ship, "M1", 300, -1, used("O1")), "movement-without-renewal M1 nozzle");
  }

  @Test
  void theNumbersOfPiecesAreCompared() {
    Ship ship = moved(renewed(ship(), "O1", 300, pieces(2)), "M1", 300, -1, used("O1"));
    assertAsked(ship, "quantities-disagree O1 nozzle");
    assertEquals(
        "Of the nozzle 2 pieces were fitted and 1 left the stock for it.",
        asked(ship, 1000).get(0).evidence());
    assertEquals(2, asked(ship, 1000).get(0).origins().size());
    assertAsked(moved(renewed(ship(), "O1", 300, pieces(2)), "M1", 300, -2, used("O1")));
  }

  @Test
  void oneMovementServesSeveralRenewals() {
    Ship two = renewed(renewed(ship(), "O1", 300), "O2", 310);
    assertAsked(moved(two, "M1", 305, -2));
    Ship three = renewed(renewed(ship(), "O1", 300), "O2", 310);
    assertAsked(moved(three, "M1", 305, -3), "movement-without-renewal M1 nozzle");
    assertEquals(
        "Of the nozzle that left the stock on 2020-11-01, no renewal accounts for 1 of the pieces.",
        asked(three, 1000).get(0).evidence());
  }

  @Test
  void nothingIsAskedWhileTheWindowIsOpen() {
    Ship ship = moved(ship(), "M1", 300, -1);
    assertEquals(List.of(), asked(ship, 329));
    assertEquals(1, asked(ship, 330).size());
  }

  private static void assertAsked(Ship ship, String... expected) {
    assertEquals(
        List.of(expected),
        asked(ship, 1000).stream().map(asked -> asked.kind() + " " + asked.record()).toList());
  }

  private static List<Problem> asked(Ship ship, int cutOff) {
    return ShipQuestionsTest.asked(ship, cutOff, 2000);
  }
}
