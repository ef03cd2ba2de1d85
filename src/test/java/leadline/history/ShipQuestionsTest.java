package leadline.history;

import static leadline.history.Ship.action;
import static leadline.history.Ship.at;
import static leadline.history.Ship.endOf;
import static leadline.history.Ship.fittedOn;
import static leadline.history.Ship.found;
import static leadline.history.Ship.opened;
import static leadline.history.Ship.tenHoursADay;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Statement;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/** What is asked for want of records, and from when on: each case by hand. */
class ShipQuestionsTest {

  /** Ten hours a day, read every 30 days from day 0 to day 300. */
  private static Ship readEveryThirtyDays(Ship.Fill... engine) {
    Ship ship = new Ship().engine(engine);
    for (int day = 0; day <= 300; day += 30) {
      ship.counter(day, 10 * day);
    }
    return ship;
  }

  @Test
  void aVesselIsSilentAfterThreeTimesItsOwnRhythm() {
    // 300 + 3 x 30 = 390: at its end the silence is just as long as may be.
    assertEquals(List.of(), asked(readEveryThirtyDays(), 390, 390));
    assertAsked(readEveryThirtyDays(), 391, "vessel-silent hours", endOf(390));
  }

  @Test
  void aSilenceIsJudgedAsOfWhatWasKnown() {
    assertEquals(List.of(), asked(readEveryThirtyDays(), 600, 390));
    assertEquals(1, asked(readEveryThirtyDays(), 391, 600).size());
  }

  @Test
  void aReadingAfterTheMonthEndsTheSilenceButNoneFromTheFutureDoes() {
    Ship late = readEveryThirtyDays().counter(450, 4500);
    assertEquals(List.of(), asked(late, 391, 500));
    assertEquals(List.of("vessel-silent hours"), names(asked(late, 391, 449)));
  }

  @Test
  void aVesselThatLeftTheFleetIsNotAskedWhyItIsSilent() {
    Ship sold = readEveryThirtyDays(row -> row.with(MachineLayout.VALID_TO, Ship.day(310)));
    assertEquals(List.of(), asked(sold, 600, 600));
  }

  @Test
  void aDailyLogMayPauseForFourteenDaysAndOneOfFewReadingsForNinetyTwo() {
    Ship daily = new Ship().engine();
    for (int day = 0; day <= 40; day++) {
      daily.counter(day, 10 * day);
    }
    assertEquals(List.of(), asked(daily, 54, 54));
    assertAsked(daily, 55, "vessel-silent hours", endOf(54));
    Ship few = new Ship().engine().counter(0, 0).counter(10, 100).counter(20, 200);
    assertEquals(List.of(), asked(few, 112, 112));
    assertAsked(few, 113, "vessel-silent hours", endOf(112));
  }

  @Test
  void aMachineIsSilentAloneWhileAnotherIsRead() {
    Ship ship = readEveryThirtyDays().machine("AE1");
    for (int day = 0; day <= 600; day += 30) {
      ship.reading("AE1", ReadingKind.COUNTER, endOf(day), 5 * day);
    }
    assertAsked(ship, 600, "machine-silent ME hours", endOf(390));
  }

  @Test
  void allPositionsOfAMachineThatRanTooLongAreOneQuestion() {
    // Due every 8,000 h; 1.75 times that is 14,000 h, which day 1400 ends with.
    assertEquals(List.of(), asked(tenHoursADay(), 1400, 2000));
    assertAsked(tenHoursADay(), 1401, "long-past-interval ME fuel-injector", endOf(1401));
  }

  @Test
  void aUnitThatRanTooLongIsAskedAboutForAllOfItsPlaces() {
    Ship ship = tenHoursADay().overhaul("O1", 300, at(1, 1)).overhaul("O2", 800, at(1, 2));
    // 1/1 passes 14,000 h since O1 in day 1701, 1/2 has run 9,010 h by then, unit 2 all 17,010 h.
    List<Problem> asked = asked(ship, 1701, 2000);
    assertEquals(
        List.of("long-past-interval ME fuel-injector unit 1", "long-past-interval ME fuel-injector unit 2"),
        names(asked));
    assertEquals(Optional.of(endOf(1701)), asked.get(0).dueSince());
    assertEquals(4, asked.get(0).origin().line()); // O1
    assertTrue(asked.get(0).evidence().contains("14010 h of @1/1, where"), asked.get(0)::evidence);
    assertEquals(Optional.of(endOf(1401)), asked.get(1).dueSince());
    assertTrue(asked.get(1).evidence().contains("17010 h of @2/1, @2/2"), asked.get(1)::evidence);
  }

  @Test
  void anOverhaulAfterTheLastReadingIsOnRecordAllTheSame() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 2010, at(1, 1))
            .overhaul("O2", 2010, at(1, 2))
            .overhaul("O3", 2010, at(2, 1))
            .overhaul("O4", 2010, at(2, 2));
    assertTrue(
        asked(ship, 2020, 2020).stream().noneMatch(p -> p.kind().equals("long-past-interval")));
  }

  @Test
  void anItemFittedBeforeTheOtherCameOut() {
    Ship ship = tenHoursADay().overhaul("O1", 500, fittedOn(490));
    assertEquals(List.of("fitted-before-removed O1"), names(asked(ship, 600, 2000)));
    assertEquals(List.of(), asked(tenHoursADay().overhaul("O1", 500, fittedOn(510)), 600, 2000));
  }

  @Test
  void findingsThatLeaveTheOpeningOpenAreOneQuestionForAPart() {
    Ship ship = tenHoursADay();
    for (int number = 1; number <= 4; number++) {
      ship.overhaul("O" + number, 100 * number).finding("O" + number, "nozzle", action(Action.CLEANED));
    }
    ship.finding("O4", "foot", opened(Statement.YES)).finding("O4", "shims", opened(Statement.NO));
    List<Problem> asked = asked(ship, 600, 2000);
    assertEquals(
        List.of("opened-unstated fuel-injector nozzle", "opened-unstated fuel-injector foot"),
        names(asked));
    assertEquals(5, asked.get(0).origin().line()); // that of O1
    assertTrue(asked.get(0).evidence().contains("4 (O1, O2, O3, O4)"), asked.get(0)::evidence);
  }

  @Test
  void partsFoundWithoutOpenedAreAskedAboutOneByOneUpToThreeTimes() {
    Ship ship = tenHoursADay();
    for (int number = 1; number <= 3; number++) {
      ship.overhaul("O" + number, 100 * number).finding("O" + number, "nozzle", found(FoundWord.WORN));
    }
    assertEquals(
        List.of(
            "found-without-opened O1 nozzle",
            "found-without-opened O2 nozzle",
            "found-without-opened O3 nozzle"),
        names(asked(ship, 600, 2000)));
    ship.overhaul("O4", 400).finding("O4", "nozzle", found(FoundWord.SOUND));
    assertEquals(
        List.of("opened-unstated fuel-injector nozzle"), names(asked(ship, 600, 2000)));
  }

  private static void assertAsked(Ship ship, int day, String name, Instant since) {
    List<Problem> asked = asked(ship, day, Math.max(day, 2000));
    if (name.contains("silent")) {
      asked = asked(ship, day, day);
    }
    assertEquals(List.of(name), names(asked));
    assertEquals(Optional.of(since), asked.get(0).dueSince());
  }

  private static List<String> names(List<Problem> asked) {
    return asked.stream().map(problem -> problem.kind() + " " + problem.record()).toList();
  }

  static List<Problem> asked(Ship ship, int cutOff, int knownAt) {
    CurrentRecords current =
        CurrentRecords.of(
            Ship.VESSEL, ship.rows().stream().map(row -> new ArrivedRow(1, row)).toList());
    Checked<VesselHistory, Problem> history =
        History.rebuild(
            current.forHistory(),
            TestCatalogue.CATALOGUE,
            RunningHours.ofHours(24),
            endOf(cutOff));
    return ShipQuestions.about(
        current, history, TestCatalogue.CATALOGUE, endOf(cutOff), endOf(knownAt));
  }
}
