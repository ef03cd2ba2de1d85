package leadline.history;

import static leadline.history.Ship.endOf;
import static leadline.history.Ship.hours;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leadline.fleet.MachineLayout;
import leadline.fleet.ReadingKind;
import leadline.history.HourSeries.Bounded;
import leadline.quantity.Days;
import leadline.quantity.Period;
import org.junit.jupiter.api.Test;

/**
 * Every rule by which a reading is used otherwise than it is written, or not at all; common
 * practice, no source. Day 0 is 2020-01-01; a day holds 24 h and, of ship's time, up to 25.
 */
class MendedReadingsTest {

  @Test
  void countersOfFourFiveAndSixDigitsRollOver() {
    for (int digits = 4; digits <= 6; digits++) {
      // 100 h before full, ten days later 100 h after: 200 h; and 100 h more.
      double full = Math.pow(10, digits);
      Ship ship = withDigits(digits).counter(0, full - 100).counter(10, 100).counter(20, 200);
      assertExact(full + 100, ship, 10);
      assertExact(full + 200, ship, 20);
      assertNotes(ship, "2020-01-11 roll-over");
      assertProblems(ship);
    }
  }

  @Test
  void aDrumWithTenthsRollsOver() {
    // 9,999.5 to 0.4 is 0.9 h.
    Ship ship = withDigits(4).counter(0, 9999.5).counter(1, 0.4).counter(2, 10.4);
    assertExact(10_000.4, ship, 1);
    assertExact(10_010.4, ship, 2);
    assertNotes(ship, "2020-01-02 roll-over");
  }

  @Test
  void threeReadingsOnEitherSideShowAChangedCounter() {
    // 40 h on the new counter within ten days of 240 h, so 5,200 + 40 and up to 200 h besides.
    Ship ship = threeReadings().counter(30, 40).counter(40, 140).counter(50, 240);
    assertExact(5240, ship, 30);
    assertExact(5440, ship, 50);
    assertEquals(exposure(440, 40, 0, 440, 640), exposure(ship, 0, 50));
    assertNotes(ship, "2020-01-31 new-counter");
    assertProblems(ship, "counter-change-unsaid ME 2020-01-31");
  }

  @Test
  void twoReadingsAfterAFallAreNoNewCounter() {
    Ship ship = threeReadings().counter(30, 40).counter(40, 140);
    assertNotes(ship, "2020-01-31 impossible", "2020-02-10 impossible");
    assertEquals(exposure(200, 0, 0, 200, 200), exposure(ship, 0, 40));
  }

  @Test
  void twoReadingsBeforeAFallAreNoOldCounter() {
    Ship ship =
        engine()
            .counter(10, 5100)
            .counter(20, 5200)
            .counter(30, 40)
            .counter(40, 140)
            .counter(50, 240);
    assertNotes(ship, "2020-01-11 impossible", "2020-01-21 impossible");
    assertEquals(exposure(200, 0, 0, 200, 200), exposure(ship, 0, 50));
  }

  /**
   * 20 h a day. Day 2 was 54,240; its neighbours allow at least 54,260 - 25 = 54,235 and at most
   * 54,220 + 25 = 54,245. The 20 h before and the 20 h after it rest on the mending.
   */
  @Test
  void aLoneSlipIsMendedWhereOneFigureAloneFits() {
    assertMended("transposed", 52_440);
    assertMended("digit-lost", 5440);
    assertMended("digit-added", 542_240);
    assertMended("digit-misread", 54_740);
    assertMended("tenfold", 542_400);
    assertMended("tenfold", 542.4);
  }

  @Test
  void whereTenthsAreUsualALostPointGivesItsTenthBack() {
    // 54,240.3; at least 54,260.4 - 25, at most 54,220.2 + 25.
    Ship ship =
        engine()
            .counter(0, 54_200.1)
            .counter(1, 54_220.2)
            .counter(2, 542_403)
            .counter(3, 54_260.4)
            .counter(4, 54_280.5);
    assertNotes(ship, "2020-01-03 tenfold");
    assertBounds(54_240.3, 54_235.4, 54_245.2, ship, 2);
  }

  @Test
  void whereWholeHoursAreUsualNoTenthWasLost() {
    Ship ship = withDayTwo(542_383);
    assertNotes(ship, "2020-01-03 digit-added");
    assertBounds(54_238, 54_235, 54_245, ship, 2);
  }

  @Test
  void whereTwoFiguresFitTheReadingIsLeftOut() {
    // 5,424 may have been 54,240 to 54,245.
    Ship ship = withDayTwo(5424);
    assertNotes(ship, "2020-01-03 impossible");
    assertProblems(ship, "impossible-reading ME 2020-01-03");
    // Between 54,220 and 54,260, at least 54,260 - 24 and at most 54,220 + 24.
    assertBounds(54_240, 54_236, 54_244, ship, 2);
  }

  @Test
  void oneOfTwoWrongReadingsInARowIsNotMended() {
    Ship ship =
        engine()
            .counter(0, 54_200)
            .counter(1, 54_220)
            .counter(2, 52_440)
            .counter(3, 52_460)
            .counter(4, 54_280)
            .counter(5, 54_300);
    assertNotes(ship, "2020-01-03 impossible", "2020-01-04 impossible");
  }

  @Test
  void aFirstReadingFarTooHighCostsItselfOnly() {
    Ship ship = engine().counter(0, 912_000).counter(10, 1000).counter(20, 1100);
    assertNotes(ship, "2020-01-01 impossible");
    assertEquals(
        List.of(
            "The reading of 912000 h is left out: those that come after it cannot follow it. Send"
                + " the reading as the log has it or, if the counter was changed, the new counter's"
                + " first reading as \"replaced\"."),
        ship.rebuilt().sentences());
    assertEquals(exposure(100, 0, 0, 100, 100), exposure(ship, 0, 20));
  }

  @Test
  void copiesOfAReadingAreLeftOut() {
    // 80 h from day 1 to day 5, and none of it on days 2 to 4 if those were readings: from day 2 on
    // 3 x 25 = 75 h are the most. On day 3 half of it; at least 200 - 48, at most 120 + 48.
    Ship ship =
        engine()
            .counter(0, 100)
            .counter(1, 120)
            .counter(2, 120)
            .counter(3, 120)
            .counter(4, 120)
            .counter(5, 200)
            .counter(6, 220)
            .counter(7, 240)
            .counter(8, 260);
    assertNotes(ship, "2020-01-03 stale", "2020-01-04 stale", "2020-01-05 stale");
    assertProblems(ship, "copied-readings ME 2020-01-03");
    assertBounds(160, 152, 168, ship, 3);
  }

  @Test
  void threeReadingsInARowOfTheRevolutionCounterAreOneQuestion() {
    // 5.4 thousand turns an hour: 1,040, 1,060 and 1,080 h make 5,616, 5,724 and 5,832.
    Ship ship =
        engine()
            .counter(0, 1000)
            .counter(1, 1020)
            .counter(2, 5616)
            .counter(3, 5724)
            .counter(4, 5832)
            .counter(5, 1100)
            .counter(6, 1120);
    assertNotes(ship, "2020-01-03 revolutions", "2020-01-04 revolutions", "2020-01-05 revolutions");
    assertProblems(ship, "other-dial ME 2020-01-03");
    assertExact(1100, ship, 5);
  }

  @Test
  void hoursOfTheMonthAmongReadingsAreLeftOut() {
    // 10 h a day: 41,300 as February begins, and 290 h run in its 29 days.
    Ship ship =
        engine()
            .counter(30, 41_300)
            .counter(40, 41_400)
            .counter(50, 41_500)
            .counter(59, 290)
            .counter(69, 41_690);
    assertNotes(ship, "2020-02-29 mixed");
    assertProblems(ship, "mixed-reading ME 2020-02-29");
  }

  @Test
  void aReadingAmongTotalsIsLeftOutAndItsHoursAreUnseen() {
    // 5,600 is what the counter showed; the 29 days since day 31 may hold up to 696 h.
    Ship ship =
        engine()
            .counter(0, 5000)
            .reading(ReadingKind.TOTAL, 31, 300)
            .reading(ReadingKind.TOTAL, 60, 5600)
            .reading(ReadingKind.TOTAL, 91, 310);
    assertNotes(ship, "2020-03-01 mixed");
    assertExact(5610, ship, 91);
    assertEquals(exposure(610, 0, 0, 610, 1306), exposure(ship, 0, 91));
  }

  @Test
  void aReadingThatFitsTheDayBeforeIsLeftOut() {
    // 24 h a day; the 48 h of day 2 bear the date of day 3.
    Ship ship = engine().counter(0, 0).counter(1, 24).counter(3, 48).counter(4, 96).counter(5, 120);
    assertNotes(ship, "2020-01-04 another-day");
    assertProblems(ship, "reading-of-another-day ME 2020-01-04");
    assertExact(72, ship, 3);
  }

  @Test
  void aReadingThatFitsAYearLaterIsLeftOut() {
    // 8 h a day, read every 30 days; the 4,800 h of day 600 bear the date of day 235. That 1,800
    // with its first digit misread would fit too does not count then.
    Ship ship = engine();
    for (int day = 0; day <= 750; day += 30) {
      ship.counter(day == 600 ? 235 : day, 8 * day);
    }
    assertNotes(ship, Days.asWritten(endOf(235)) + " another-day");
    assertExact(8 * 630, ship, 630);
  }

  @Test
  void ofTwoReadingsThatContradictEachOtherNeitherIsTaken() {
    // Either 150 on day 10 or 120 on day 20. Without both, 220 h in 30 days: 110 by day 15.
    Ship ship = engine().counter(0, 0).counter(10, 150).counter(20, 120).counter(30, 220);
    assertNotes(ship, "2020-01-11 contradicted", "2020-01-21 contradicted");
    assertProblems(ship, "readings-contradict ME 2020-01-11");
    assertBounds(110, 0, 220, ship, 15);
  }

  @Test
  void minutesAsDecimalsAreAskedAboutFromFortyFractionsOn() {
    assertProblems(withFractions(40), "minutes-as-decimals ME");
    assertProblems(withFractions(39));
    assertProblems(withFractions(40).counter(60, 600.6));
  }

  @Test
  void aTotalCopiedOnIsAskedAboutUnlessAllAreAverages() {
    Ship ship = engine();
    Ship averages = engine();
    for (int month = 1; month <= 11; month++) {
      ship.reading(ReadingKind.TOTAL, 30 * month, month == 5 ? 304 : 300 + month);
      averages.reading(ReadingKind.TOTAL, 30 * month, 300);
    }
    assertProblems(ship, "total-repeated ME 2020-05-30");
    assertProblems(averages);
  }

  @Test
  void exposureOfALongGapIsInterpolatedAndBoundedInside() {
    // 600 h in 60 days, more than 45. Day 30: 300 h; at least 600 - 720 < 0, at most all 600.
    Ship ship = engine().counter(0, 0).counter(60, 600).counter(70, 700);
    assertEquals(exposure(700, 0, 600, 700, 700), exposure(ship, 0, 70));
    assertEquals(exposure(300, 0, 300, 0, 600), exposure(ship, 0, 30));
  }

  private static void assertMended(String rule, double dayTwo) {
    Ship ship = withDayTwo(dayTwo);
    assertNotes(ship, "2020-01-03 " + rule);
    assertProblems(ship);
    assertBounds(54_240, 54_235, 54_245, ship, 2);
    assertEquals(exposure(80, 40, 0, 80, 80), exposure(ship, 0, 4));
    assertEquals(exposure(40, 20, 0, 35, 45), exposure(ship, 0, 2));
  }

  private static Ship withDayTwo(double reading) {
    return engine()
        .counter(0, 54_200)
        .counter(1, 54_220)
        .counter(2, reading)
        .counter(3, 54_260)
        .counter(4, 54_280);
  }

  private static Ship threeReadings() {
    return engine().counter(0, 5000).counter(10, 5100).counter(20, 5200);
  }

  /** Ten hours a day, and a fraction of .1 to .5 each. */
  private static Ship withFractions(int count) {
    Ship ship = engine();
    for (int i = 1; i <= count; i++) {
      ship.counter(i, 10 * i + (i % 5 + 1) / 10.0);
    }
    return ship;
  }

  private static Ship engine() {
    return new Ship().engine();
  }

  private static Ship withDigits(long digits) {
    return new Ship().engine(row -> row.with(MachineLayout.COUNTER_DIGITS, digits));
  }

  private static HourSeries series(Ship ship) {
    return ship.rebuilt().engine().hours();
  }

  private static Exposure exposure(Ship ship, int from, int to) {
    return series(ship).exposure(new Period(endOf(from), endOf(to)));
  }

  private static Exposure exposure(
      double run, double repaired, double interpolated, double least, double most) {
    return new Exposure(
        hours(run), hours(repaired), hours(interpolated), hours(least), hours(most));
  }

  private static void assertExact(double hours, Ship ship, int day) {
    assertBounds(hours, hours, hours, ship, day);
  }

  private static void assertBounds(double hours, double lower, double upper, Ship ship, int day) {
    assertEquals(
        new Bounded(hours(hours), hours(lower), hours(upper)),
        series(ship).at(endOf(day)).orElseThrow());
  }

  private static void assertProblems(Ship ship, String... problems) {
    assertEquals(List.of(problems), ship.rebuilt().problems());
  }

  private static void assertNotes(Ship ship, String... notes) {
    assertEquals(
        List.of(notes),
        series(ship).notes().stream()
            .map(note -> Days.asWritten(note.reading().at()) + " " + note.rule().word())
            .toList());
  }
}
