package leadline.history;

import static leadline.history.Ship.endOf;
import static leadline.history.Ship.hours;
import static leadline.history.Ship.opened;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineLayout;
import leadline.fleet.ReadingKind;
import leadline.history.HourSeries.Bounded;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/**
 * Whether hours run are of the whole time since the reading before. The log has a total every 30
 * days of 300 h each, from 0 on day 0 to day 90 (900 h), and then nothing until the day of the
 * case.
 */
class TotalAfterGapTest {

  private static Ship ninetyDays() {
    return everyDays(30, 90);
  }

  private static Ship everyDays(int apart, int until) {
    Ship ship = new Ship().engine().counter(0, 0);
    for (int day = apart; day <= until; day += apart) {
      total(ship, day, 10 * apart);
    }
    return ship;
  }

  private static Ship total(Ship ship, int day, double hours) {
    return ship.reading(ReadingKind.TOTAL, day, hours);
  }

  @Test
  void aTotalAfterAGapIsAskedAboutAndTheHoursOfTheGapAreBounded() {
    // 60 days of which the last 30 are covered: up to 30 x 24 = 720 h more. The total itself
    // stands.
    Ship ship = total(total(ninetyDays(), 150, 310), 180, 300);
    assertEquals(List.of("total-after-gap ME " + Ship.day(150)), ship.rebuilt().problems());
    String sentence = ship.rebuilt().sentences().get(0);
    assertTrue(sentence.contains("310 h run by " + Ship.day(150)), sentence);
    assertTrue(sentence.contains("since " + Ship.day(90) + ", 60 days before"), sentence);
    assertTrue(sentence.contains("last 30 days only, up to 720 h"), sentence);
    HourSeries series = ship.rebuilt().engine().hours();
    assertEquals(
        new Bounded(hours(1210), hours(1210), hours(1210)), series.at(endOf(150)).orElseThrow());
    // Day 120 is half way: 900 + 155, as the total has it; what may be missing stands besides.
    assertEquals(
        new Bounded(hours(1055), hours(900), hours(1210)), series.at(endOf(120)).orElseThrow());
    Exposure all = series.exposure(new Period(endOf(0), endOf(180)));
    assertEquals(hours(1510), all.hours());
    assertEquals(hours(1510), all.least());
    assertEquals(hours(1510 + 720), all.most());
    assertEquals(hours(310), all.interpolated());
  }

  @Test
  void aGapIsLongerThanFortyFiveDays() {
    assertEquals(List.of(), total(ninetyDays(), 135, 300).rebuilt().problems());
    assertEquals(1, total(ninetyDays(), 136, 300).rebuilt().problems().size());
  }

  @Test
  void aTotalThatItsLastIntervalCannotHoldCoversMore() {
    // 30 days hold 25 h each at most: 750.
    assertEquals(1, total(ninetyDays(), 150, 750).rebuilt().problems().size());
    Ship whole = total(ninetyDays(), 150, 750.1);
    assertEquals(List.of(), whole.rebuilt().problems());
    Exposure all = whole.rebuilt().engine().hours().exposure(new Period(endOf(0), endOf(150)));
    assertEquals(all.hours(), all.most());
    assertEquals(RunningHours.ZERO, all.interpolated());
  }

  @Test
  void aLogThatIsSeldomTotalledHasNoGapInItsOwnRhythm() {
    // Every 90 days; one and a half of that is 135.
    assertEquals(List.of(), everyDays(90, 360).rebuilt().problems());
    assertEquals(List.of(), total(everyDays(90, 360), 495, 900).rebuilt().problems());
    assertEquals(1, total(everyDays(90, 360), 496, 900).rebuilt().problems().size());
  }

  @Test
  void withFewTotalsTheRhythmIsTakenForAMonth() {
    // One and a half of 31 days is 46.5.
    Ship few = new Ship().engine().counter(0, 0);
    assertEquals(List.of(), total(few, 46, 300).rebuilt().problems());
    Ship fewer = total(new Ship().engine().counter(0, 0), 47, 300);
    assertEquals(List.of("total-after-gap ME " + Ship.day(47)), fewer.rebuilt().problems());
    assertTrue(fewer.rebuilt().sentences().get(0).contains("up to 384 h")); // (47 - 31) x 24
  }

  @Test
  void eachGapIsOneQuestion() {
    Ship ship = total(total(total(ninetyDays(), 150, 300), 180, 300), 240, 300);
    assertEquals(
        List.of("total-after-gap ME " + Ship.day(150), "total-after-gap ME " + Ship.day(240)),
        ship.rebuilt().problems());
    assertEquals(List.of(), total(total(ninetyDays(), 120, 300), 150, 300).rebuilt().problems());
  }

  /** 800 h in the month to day 120 cannot be, and is left out; the next total begins there. */
  @Test
  void aTotalLeftOutIsAReadingBeforeAllTheSame() {
    Ship ship = total(total(ninetyDays(), 120, 800), 150, 300);
    assertEquals(List.of("impossible-reading ME " + Ship.day(120)), ship.rebuilt().problems());
  }

  /**
   * New on day 0 and run 10 h a day; the total of day 120 is lost, so that the log gives 2,100 h on
   * day 240, and up to 720 h besides.
   */
  private static Ship newWithAGap() {
    Ship ship = new Ship().engine(row -> row.with(MachineLayout.IN_SERVICE_ON, Ship.day(0)));
    ship.counter(0, 0);
    for (int day = 30; day <= 300; day += 30) {
      if (day != 120) {
        total(ship, day, 300);
      }
    }
    return ship;
  }

  private static List<String> asked(Ship ship) {
    return ShipQuestionsTest.asked(ship, 300, 300).stream()
        .map(problem -> problem.kind() + " " + problem.record())
        .toList();
  }

  private static Ship aged(Ship ship, String overhaul, int day, double age) {
    return ship.overhaul(overhaul, day)
        .finding(overhaul, "nozzle", opened(FoundWord.SOUND, Action.NONE), Ship.hoursSinceNew(age));
  }

  @Test
  void anAgeThatTheGapExplainsIsNotAskedAboutAgain() {
    String gap = "total-after-gap ME " + Ship.day(150);
    assertEquals(List.of(gap), asked(aged(newWithAGap(), "O1", 240, 2400)));
    assertEquals(List.of(gap), asked(aged(newWithAGap(), "O1", 240, 2820)));
    assertEquals(
        List.of(gap, "ages-disagree O1 nozzle"), asked(aged(newWithAGap(), "O1", 240, 2820.1)));
    // A part cannot be younger because hours are missing.
    assertEquals(
        List.of(gap, "ages-disagree O1 nozzle"), asked(aged(newWithAGap(), "O1", 240, 1800)));
  }

  @Test
  void anAgeCountedFromAfterTheGapIsAskedAbout() {
    // Renewed on day 180 at 1,500 h, so 600 h old on day 240.
    Ship ship =
        newWithAGap()
            .overhaul("O1", 180)
            .finding("O1", "nozzle", opened(FoundWord.WORN, Action.RENEWED));
    assertEquals(
        List.of("total-after-gap ME " + Ship.day(150), "ages-disagree O2 nozzle"),
        asked(aged(ship, "O2", 240, 900)));
  }
}
