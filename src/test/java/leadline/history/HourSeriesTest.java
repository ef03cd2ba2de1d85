package leadline.history;

import static leadline.history.Ship.endOf;
import static leadline.history.Ship.hours;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineLayout;
import leadline.fleet.ReadingKind;
import leadline.history.HourSeries.Bounded;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/**
 * Counters to machine hours. That a day of ship's time may have 25 hours, that counters roll over
 * and are changed, and how each is told from a wrong figure, is common practice, no source. The
 * figures are added up by hand.
 */
class HourSeriesTest {

  private static final Ship.Fill FIVE_DIGITS = row -> row.with(MachineLayout.COUNTER_DIGITS, 5L);

  @Test
  void theSeriesBeginsAtTheFirstReading() {
    Ship ship = engine().counter(0, 41_200).counter(10, 41_300);
    assertExact(41_200, ship, 0);
    assertExact(41_300, ship, 10);
  }

  @Test
  void totalsAddUpFromTheFirst() {
    Ship ship =
        engine()
            .reading(ReadingKind.TOTAL, 31, 400)
            .reading(ReadingKind.TOTAL, 60, 350)
            .reading(ReadingKind.TOTAL, 91, 0);
    assertExact(400, ship, 31);
    assertExact(750, ship, 60);
    assertExact(750, ship, 91);
  }

  @Test
  void aCounterReplacedWithoutAGapLosesNoHours() {
    // 500 on the old counter, 3 on the new one the same day, so 100 on the new one is 597.
    Ship ship =
        engine()
            .counter(0, 0)
            .counter(50, 500)
            .reading(ReadingKind.REPLACED, 50, 3)
            .counter(60, 100);
    assertExact(500, ship, 50);
    assertExact(597, ship, 60);
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void aCounterReplacedWithAGapCountsNothingInTheGapAndWidensTheBounds() {
    // Days 50 to 60 are on no counter: the machine can have run 0 to 240 h.
    Ship ship =
        engine()
            .counter(0, 0)
            .counter(50, 500)
            .reading(ReadingKind.REPLACED, 60, 10)
            .counter(70, 110);
    assertExact(500, ship, 60);
    assertExact(600, ship, 70);
    assertBounds(500, 500, 500 + 5 * 24, ship, 55);
    assertEquals(List.of("counter-gap ME 2020-03-01"), ship.rebuilt().problems());
    assertTrue(ship.rebuilt().sentences().get(0).contains("up to 240 h"));
    assertEquals(hours(600), exposure(ship, 0, 70).hours());
    assertEquals(RunningHours.ZERO, exposure(ship, 50, 60).hours());
  }

  @Test
  void aPlainRollOverIsAcceptedAndItsIncrementIsRepaired() {
    // 99,900 to 100 on five digits is 200 h in 20 days.
    Ship ship = engine(FIVE_DIGITS).counter(0, 99_900).counter(20, 100).counter(30, 200);
    assertExact(100_100, ship, 20);
    assertExact(100_200, ship, 30);
    assertEquals(hours(300), exposure(ship, 0, 30).hours());
    assertEquals(hours(200), exposure(ship, 0, 30).repaired());
    // Half of the 20 days, so half of the increment.
    assertEquals(hours(100), exposure(ship, 0, 10).hours());
    assertEquals(hours(100), exposure(ship, 0, 10).repaired());
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void aFallThatIsNoPlainRollOverIsRefused() {
    // 100 + 100,000 - 60,000 is 40,100 h, which no 20 days hold.
    Ship ship = engine(FIVE_DIGITS).counter(0, 60_000).counter(20, 100).counter(30, 60_300);
    assertEquals(List.of("impossible-reading ME 2020-01-21"), ship.rebuilt().problems());
    assertExact(60_300, ship, 30);
  }

  @Test
  void withoutTheCountersDigitsAFallIsRefused() {
    Ship ship = engine().counter(0, 99_900).counter(20, 100);
    assertEquals(List.of("impossible-reading ME 2020-01-21"), ship.rebuilt().problems());
    assertTrue(ship.rebuilt().sentences().get(0).contains("fallen by 99800"));
  }

  @Test
  void aDayMayHaveTwentyFiveHoursButNoMore() {
    Ship ship = engine().counter(0, 0).counter(1, 25).counter(2, 50.1).counter(3, 60);
    assertEquals(List.of("impossible-reading ME 2020-01-03"), ship.rebuilt().problems());
    assertTrue(ship.rebuilt().sentences().get(0).contains("25.1 h in 24 h of time"));
    // Left out, so the next is judged and interpolated against day 1: 25 + (60 - 25) / 2 = 42.5.
    assertEquals(hours(42.5), at(ship, 2).hours());
  }

  @Test
  void aTotalOfMoreHoursThanThereWereIsRefused() {
    Ship ship =
        engine()
            .reading(ReadingKind.TOTAL, 0, 100)
            .reading(ReadingKind.TOTAL, 10, 251)
            .reading(ReadingKind.TOTAL, 20, 90);
    assertEquals(List.of("impossible-reading ME 2020-01-11"), ship.rebuilt().problems());
    assertExact(190, ship, 20);
  }

  @Test
  void betweenTwoReadingsHoursAreInterpolatedAndBounded() {
    // 100 h in 10 days. Day 2: 20 h; at least 100 - 8 x 24 < 0; at most 2 x 24 = 48.
    Ship ship = engine().counter(0, 1000).counter(10, 1100);
    assertBounds(1020, 1000, 1048, ship, 2);
    // Day 8: 80 h; at least 100 - 2 x 24 = 52; at most all 100.
    assertBounds(1080, 1052, 1100, ship, 8);
  }

  @Test
  void interpolationRoundsHalfUpToATenth() {
    // 0.1 h in two days: after one day 0.05, so 0.1. 0.1 h in three: after one day 0.033.
    assertEquals(hours(0.1), at(engine().counter(0, 0).counter(2, 0.1), 1).hours());
    assertEquals(RunningHours.ZERO, at(engine().counter(0, 0).counter(3, 0.1), 1).hours());
  }

  @Test
  void aTwentyFiveHourDayStaysWithinItsOwnBounds() {
    Ship ship = engine().counter(0, 0).counter(1, 25);
    Bounded noon = series(ship).at(endOf(0).plus(Duration.ofHours(12))).orElseThrow();
    assertEquals(hours(12.5), noon.hours());
    assertTrue(!noon.lower().isAbove(noon.hours()) && !noon.hours().isAbove(noon.upper()));
  }

  @Test
  void beforeTheFirstAndAfterTheLastReadingNothingIsKnown() {
    Ship ship = engine().counter(10, 100).counter(20, 200);
    assertEquals(Optional.empty(), series(ship).at(endOf(9)));
    assertEquals(Optional.empty(), series(ship).at(endOf(21)));
    assertEquals(hours(100), exposure(ship, 0, 500).hours());
    assertEquals(Exposure.NONE, exposure(ship, 30, 40));
  }

  @Test
  void aMachineWithOneReadingIsKnownAtThatMomentOnly() {
    Ship ship = engine().counter(10, 100);
    assertExact(100, ship, 10);
    assertEquals(Optional.empty(), series(ship).at(endOf(11)));
    assertEquals(Exposure.NONE, exposure(ship, 0, 20));
    assertEquals(Optional.empty(), ship.rebuilt().engine().observed());
    assertEquals(List.of(), ship.rebuilt().engine().lives());
  }

  @Test
  void aMachineWithoutReadingsIsKnownAtNoMoment() {
    assertEquals(Exposure.NONE, exposure(engine(), 0, 10));
    assertEquals(Optional.empty(), series(engine()).at(endOf(0)));
  }

  @Test
  void aWindowOfNoLengthHoldsNoHours() {
    assertEquals(Exposure.NONE, exposure(engine().counter(0, 0).counter(10, 100), 5, 5));
  }

  @Test
  void readingsOfAnHourAreJoinedLikeThoseOfADay() {
    Instant noon = Instant.parse("2020-01-05T12:00:00Z");
    Ship ship = engine().counter(0, 0).reading(Ship.ENGINE, ReadingKind.COUNTER, noon, 80);
    assertEquals(hours(80), series(ship).at(noon).orElseThrow().hours());
  }

  private static Ship engine(Ship.Fill... cells) {
    return new Ship().engine(cells);
  }

  private static HourSeries series(Ship ship) {
    return ship.rebuilt().engine().hours();
  }

  private static Bounded at(Ship ship, int day) {
    return series(ship).at(endOf(day)).orElseThrow();
  }

  private static Exposure exposure(Ship ship, int from, int to) {
    return series(ship).exposure(new Period(endOf(from), endOf(to)));
  }

  private static void assertExact(double hours, Ship ship, int day) {
    assertBounds(hours, hours, hours, ship, day);
  }

  private static void assertBounds(double hours, double lower, double upper, Ship ship, int day) {
    assertEquals(new Bounded(hours(hours), hours(lower), hours(upper)), at(ship, day));
  }
}
