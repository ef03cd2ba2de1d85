package leadline.history;

import static leadline.history.Ship.at;
import static leadline.history.Ship.hours;
import static leadline.history.Ship.machineHours;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import leadline.fleet.ReadingKind;
import leadline.fleet.SourcedRow;
import org.junit.jupiter.api.Test;

/**
 * Overhauls whose hours are shifted against the log. The engine runs 10 h a day and its hours are
 * totalled every 30 days; the total of day 120 is lost. So the log gives 900 h on day 90, 1,200 on
 * day 150 and, from then on, 300 h less than the counter shows: 1,500 on day 180, 1,800 on day 210,
 * and so on. The overhauls are on days of a total, on which log hours have no width, and the
 * tolerance is 24 h: an overhaul that states d hours more than the log allows shifts from d - 24 to
 * d + 24.
 */
class HourShiftsTest {

  private static final int LAST_DAY = 1800;

  private static Ship monthLost() {
    Ship ship = new Ship().engine().counter(0, 0);
    for (int day = 30; day <= LAST_DAY; day += 30) {
      if (day != 120) {
        ship.reading(ReadingKind.TOTAL, day, 300);
      }
    }
    return ship;
  }

  /** An overhaul that states so many hours more than the log gives from day 150 on. */
  private static Ship stating(Ship ship, String overhaul, int day, double more, int place) {
    return ship.overhaul(
        overhaul, day, machineHours(10 * day - 300 + more), at(place / 2 + 1, place % 2 + 1));
  }

  @Test
  void overhaulsShiftedByTheSameAreOneQuestion() {
    Ship ship = monthLost();
    stating(ship, "O1", 180, 300, 0);
    stating(ship, "O2", 210, 300, 1);
    stating(ship, "O3", 900, 300, 0);
    assertAsked(List.of("O1"), ship);
    String sentence = ship.rebuilt().sentences().get(1);
    assertTrue(sentence.contains("1800 machine hours are 300 h above the 1500 h"), sentence);
    assertTrue(sentence.contains("From " + Ship.day(180) + " on"), sentence);
    assertTrue(sentence.contains("in 2 more, up to O3"), sentence);
    // The log's hours are used for all three.
    assertEquals(hours(1500), ship.rebuilt().visit("O1").machineHours());
    assertEquals(hours(1800), ship.rebuilt().visit("O2").machineHours());
    assertEquals(hours(8700), ship.rebuilt().visit("O3").machineHours());
  }

  @Test
  void aShiftIsTheSameWhereOneShiftBringsAllWithinTheTolerance() {
    // 276 to 324 and 324 to 372 have 324 in common; 324.1 to 372.1 has none.
    assertAsked(List.of("O1"), stating(stating(monthLost(), "O1", 180, 300, 0), "O2", 210, 348, 1));
    assertAsked(
        List.of("O1", "O2"), stating(stating(monthLost(), "O1", 180, 300, 0), "O2", 210, 348.1, 1));
    // A shift does not drift: after 300 and 330 (306 to 324) 354 (330 to 378) is another one.
    Ship drifting = stating(stating(monthLost(), "O1", 180, 300, 0), "O2", 210, 330, 1);
    assertAsked(List.of("O1", "O3"), stating(drifting, "O3", 240, 354, 2));
  }

  @Test
  void anOverhaulOffByItselfIsAskedAboutAndTheShiftGoesOn() {
    Ship ship = monthLost();
    stating(ship, "O1", 180, 300, 0);
    stating(ship, "O2", 210, 900, 1);
    stating(ship, "O3", 240, 300, 2);
    assertAsked(List.of("O1", "O2"), ship);
    // 900 again, a year later, is a slip of its own.
    stating(ship, "O4", 570, 900, 3);
    assertAsked(List.of("O1", "O2", "O4"), ship);
  }

  @Test
  void overhaulsOfOneDayWithTheSameSlipAreOneQuestionAndTheShiftGoesOn() {
    Ship ship = monthLost();
    stating(ship, "O1", 180, 300, 0);
    stating(ship, "O2", 210, 900, 1);
    stating(ship, "O3", 210, 900, 2);
    stating(ship, "O4", 210, 900, 3);
    stating(ship, "O5", 240, 300, 0);
    assertAsked(List.of("O1", "O2"), ship);
  }

  @Test
  void aSecondMonthLostIsASecondShiftAndTheFirstIsOver() {
    Ship ship = monthLost();
    stating(ship, "O1", 180, 300, 0);
    stating(ship, "O2", 210, 600, 1);
    stating(ship, "O3", 240, 600, 2);
    assertAsked(List.of("O1", "O2"), ship);
    stating(ship, "O4", 270, 300, 3);
    assertAsked(List.of("O1", "O2", "O4"), ship);
  }

  @Test
  void anOverhaulThatFitsTheLogEndsTheShift() {
    Ship ship = monthLost();
    stating(ship, "O1", 180, 300, 0);
    stating(ship, "O2", 210, 0, 1);
    stating(ship, "O3", 240, 300, 2);
    assertAsked(List.of("O1", "O3"), ship);
  }

  /**
   * On day 195 the log has 1,500 to 1,800 h: with 24 h more 1,824 fit, and so do 300 h of shift.
   */
  @Test
  void anOverhaulThatFitsTheLogAndTheShiftDoesNotEndIt() {
    Ship ship = monthLost();
    stating(ship, "O1", 180, 300, 0);
    stating(ship, "O2", 195, 174, 1);
    stating(ship, "O3", 240, 300, 2);
    assertAsked(List.of("O1"), ship);
    assertEquals(hours(1824), ship.rebuilt().visit("O2").machineHours());
    assertEquals(1, asked(ship).following());
  }

  /** That day's 1,650 h, half way from 1,500 to 1,800, in place of 1,824. */
  @Test
  void onceTheShiftIsProvenSuchAnOverhaulHasTheHoursOfTheLog() {
    Ship ship = monthLost();
    stating(ship, "O1", 150, 300, 0);
    stating(ship, "O2", 180, 300, 2);
    stating(ship, "O3", 195, 174, 1);
    assertAsked(List.of("O1"), ship);
    assertEquals(hours(1650), ship.rebuilt().visit("O3").machineHours());
    assertEquals(2, asked(ship).following());
  }

  @Test
  void theQuestionsDoNotGrowWithTheOverhaulsOfTheSameShiftAndNotWithTheOrderOfRows() {
    for (int seed = 0; seed < 50; seed++) {
      Random random = new Random(seed);
      double shift = 100 + random.nextInt(600);
      Ship ship = monthLost();
      int overhauls = 1 + random.nextInt(40);
      for (int number = 1; number <= overhauls; number++) {
        // Up to 24 h around the shift, so that the shift itself is in all ranges.
        double stated = shift + random.nextInt(49) - 24;
        stating(ship, "O" + number, 150 + 30 * random.nextInt(50), stated, random.nextInt(4));
      }
      Asked before = asked(ship);
      assertEquals(1, before.names().size(), "seed " + seed);
      assertEquals(overhauls - 1, before.following(), "seed " + seed);
      Ship shuffled = new Ship();
      List<SourcedRow> rows = new ArrayList<>(ship.rows());
      Collections.shuffle(rows, random);
      shuffled.rows().addAll(rows);
      assertEquals(before, asked(shuffled), "seed " + seed);
    }
  }

  private record Asked(List<String> names, int following) {}

  private static Asked asked(Ship ship) {
    List<OverhaulProblem.HoursDisagree> asked =
        ship.rebuilt().checked().problems().stream()
            .filter(OverhaulProblem.HoursDisagree.class::isInstance)
            .map(OverhaulProblem.HoursDisagree.class::cast)
            .toList();
    return new Asked(
        asked.stream().map(problem -> problem.overhaul().overhaul()).toList(),
        asked.stream().mapToInt(problem -> problem.following().size()).sum());
  }

  private static void assertAsked(List<String> overhauls, Ship ship) {
    assertEquals(overhauls, asked(ship).names());
  }
}
