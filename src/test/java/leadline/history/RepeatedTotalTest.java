package leadline.history;

import static leadline.history.Ship.endOf;
import static leadline.history.Ship.hours;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leadline.fleet.ReadingKind;
import leadline.history.HourSeries.Bounded;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/**
 * What a month may have had whose total is that of the month before, written on. The log has 24
 * totals, one every 30 days, each of 300 h and as many more as its number: 301, 302 and so on.
 */
class RepeatedTotalTest {

  private static final int TOTALS = 24;

  private static Ship log(int copy) {
    Ship ship = new Ship().engine().counter(0, 0);
    for (int number = 1; number <= TOTALS; number++) {
      ship.reading(ReadingKind.TOTAL, 30 * number, 300 + (number == copy ? number - 1 : number));
    }
    return ship;
  }

  private static Exposure exposure(Ship ship, int from, int to) {
    return ship.rebuilt().engine().hours().exposure(new Period(endOf(from), endOf(to)));
  }

  /** The tenth total is the ninth, 309 h, for days 270 to 300: up to 30 x 24 = 720 h, or none. */
  @Test
  void theMonthMayHaveHadAnyHours() {
    Ship ship = log(10);
    assertEquals(List.of("total-repeated ME " + Ship.day(300)), ship.rebuilt().problems());
    Exposure month = exposure(ship, 270, 300);
    assertEquals(hours(309), month.hours());
    assertEquals(hours(309), month.interpolated());
    assertEquals(RunningHours.ZERO, month.least());
    assertEquals(hours(720), month.most());
  }

  /** Half of it, days 285 to 300: 154.5 h, of which none need have been, and at most 360 h. */
  @Test
  void aPartOfTheMonthHasItsShareOfTheDoubt() {
    Exposure half = exposure(log(10), 285, 300);
    assertEquals(hours(154.5), half.hours());
    assertEquals(RunningHours.ZERO, half.least());
    assertEquals(hours(360), half.most());
  }

  @Test
  void theMonthsBesideItAreCountedAsTheyAre() {
    for (int end : List.of(270, 330)) {
      Exposure month = exposure(log(10), end - 30, end);
      assertEquals(month.hours(), month.least());
      assertEquals(month.hours(), month.most());
      assertEquals(RunningHours.ZERO, month.interpolated());
    }
  }

  /** 301 to 324 h are 7,500 h; 309 for 310 h makes 7,499, of which 309 may not have been. */
  @Test
  void theWholeLogLacksWhatTheMonthMayNotHaveHad() {
    Exposure all = exposure(log(10), 0, 720);
    assertEquals(hours(7_499), all.hours());
    assertEquals(hours(7_499 - 309), all.least());
    assertEquals(hours(7_499 + 720 - 309), all.most());
  }

  /** Totals 9 and 11 alike, 60 days apart, and none between: 309 h, or any up to 1,440 h. */
  @Test
  void aCopyAfterAGapIsInDoubtOnceAndAskedAboutTwice() {
    Ship ship = new Ship().engine().counter(0, 0);
    for (int number = 1; number <= TOTALS; number++) {
      if (number != 10) {
        ship.reading(ReadingKind.TOTAL, 30 * number, 300 + (number == 11 ? 9 : number));
      }
    }
    assertEquals(
        List.of("total-after-gap ME " + Ship.day(330), "total-repeated ME " + Ship.day(330)),
        ship.rebuilt().problems());
    Exposure gap = exposure(ship, 270, 330);
    assertEquals(hours(309), gap.hours());
    assertEquals(hours(309), gap.interpolated());
    assertEquals(RunningHours.ZERO, gap.least());
    assertEquals(hours(1_440), gap.most());
    // 7,500 h less 310 and 311, and 309 for the two; besides those, 1,440 - 309 h.
    Exposure all = exposure(ship, 0, 720);
    assertEquals(hours(7_188), all.hours());
    assertEquals(hours(7_188 - 309), all.least());
    assertEquals(hours(7_188 + 1_440 - 309), all.most());
  }

  /** The series itself goes on from what is written: what an overhaul states is held against it. */
  @Test
  void theSeriesStandsAsItIsWritten() {
    HourSeries series = log(10).rebuilt().engine().hours();
    Bounded end = series.at(endOf(300)).orElseThrow();
    assertEquals(hours(301 + 302 + 303 + 304 + 305 + 306 + 307 + 308 + 309 + 309), end.hours());
    assertEquals(end.hours(), end.lower());
    assertEquals(end.hours(), end.upper());
  }

  @Test
  void averagesWrittenMonthByMonthAreNoCopies() {
    Ship ship = new Ship().engine().counter(0, 0);
    for (int number = 1; number <= TOTALS; number++) {
      ship.reading(ReadingKind.TOTAL, 30 * number, 300);
    }
    Exposure all = exposure(ship, 0, 720);
    assertEquals(hours(7_200), all.hours());
    assertEquals(all.hours(), all.least());
    assertEquals(all.hours(), all.most());
  }
}
