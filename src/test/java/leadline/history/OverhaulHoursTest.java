package leadline.history;

import static leadline.history.Ship.hours;
import static leadline.history.Ship.machineHours;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leadline.fleet.ReadingKind;
import org.junit.jupiter.api.Test;

/** Which figure is an overhaul's machine hours. The tolerance is 24 h. */
class OverhaulHoursTest {

  /** 300 h a month: on day 110 the series says 1,100, at least 960 and at most 1,200. */
  private static Ship monthly() {
    return new Ship().engine().counter(0, 0).counter(100, 1000).counter(120, 1200);
  }

  @Test
  void withoutAFigureTheSeriesIsUsed() {
    assertHours(1100, monthly().overhaul("O1", 110));
  }

  @Test
  void aFigureWithinTheBoundsIsTrusted() {
    assertHours(1150, monthly().overhaul("O1", 110, machineHours(1150)));
  }

  @Test
  void aFigureWithinTheToleranceOfABoundIsTrusted() {
    // At most 1,000 + 10 x 24 = 1,240, but not above 1,200, and 24 more.
    assertHours(1224, monthly().overhaul("O1", 110, machineHours(1224)));
    // At least max(1,000, 1,200 - 240), and 24 less.
    assertHours(976, monthly().overhaul("O1", 110, machineHours(976)));
  }

  @Test
  void aFigureBeyondIsReportedAndTheSeriesUsed() {
    Ship ship = monthly().overhaul("O1", 110, machineHours(1224.1));
    assertHours(1100, ship);
    assertEquals(List.of("hours-disagree O1"), ship.rebuilt().problems());
    assertTrue(ship.rebuilt().sentences().get(0).contains("124.1 h above the 1100 h"));
  }

  @Test
  void aFigureIsFirstReadAsTheCounterInForceThenAsTheRunningTotal() {
    // The new counter starts at 0 at 1,000 h: 98 on it is 1,098, and 1,098 is the running total.
    Ship changed =
        new Ship()
            .engine()
            .counter(0, 0)
            .counter(100, 1000)
            .reading(ReadingKind.REPLACED, 100, 0)
            .counter(120, 200);
    assertHours(1098, changed.overhaul("O1", 110, machineHours(98)));
    assertHours(1097, changed.overhaul("O1", 110, machineHours(1097)));
  }

  @Test
  void onTheDayOfAChangeEitherCounterMayBeMeant() {
    Ship changed =
        new Ship()
            .engine()
            .counter(0, 0)
            .counter(100, 1000)
            .reading(ReadingKind.REPLACED, 100, 0)
            .counter(120, 200);
    assertHours(1000, changed.overhaul("O1", 100, machineHours(0)));
    assertHours(1001, changed.overhaul("O1", 100, machineHours(1001)));
  }

  @Test
  void alongAPositionHoursNeverFall() {
    // The first is trusted at 1,210; ten days on the series says 1,200.
    Ship ship =
        monthly().counter(130, 1200).overhaul("O1", 119, machineHours(1210)).overhaul("O2", 125);
    assertHours(1210, ship);
    assertEquals(hours(1210), ship.rebuilt().visit("O2").machineHours());
  }

  private static void assertHours(double hours, Ship ship) {
    assertEquals(hours(hours), ship.rebuilt().visit("O1").machineHours());
  }
}
