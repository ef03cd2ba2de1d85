package leadline.history;

import static leadline.history.Ship.at;
import static leadline.history.Ship.because;
import static leadline.history.Ship.endOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.problem.Problem;
import org.junit.jupiter.api.Test;

/** Machines that nobody ever read, and vessels that send no overhauls any more: each by hand. */
class SilencesTest {

  /** The engine is read every 30 days from day 0; another machine is on the register alone. */
  private static Ship withAnotherMachine(Ship.Fill... cells) {
    Ship ship = new Ship().engine().machine("AE1", cells);
    for (int day = 0; day <= 300; day += 30) {
      ship.counter(day, 10 * day);
    }
    return ship;
  }

  @Test
  void aMachineNeverReadIsAskedAboutAfterNinetyTwoDaysOfTheOthersLog() {
    // The reading of day 90 is the last within the 92 days, that of day 120 is beyond.
    assertEquals(List.of(), names(withAnotherMachine(), 119));
    List<Problem> asked = ShipQuestionsTest.asked(withAnotherMachine(), 120, 120);
    assertEquals(List.of("machine-never-read AE1 hours"), names(asked));
    assertEquals(Optional.of(endOf(92)), asked.get(0).dueSince());
    assertEquals(2, asked.get(0).origin().line()); // its row of the register
  }

  @Test
  void aMachineThatCameLaterHasItsOwnNinetyTwoDays() {
    // From the start of day 200, which is the end of day 199, to that of day 291.
    Ship.Fill later = row -> row.with(MachineLayout.VALID_FROM, Ship.day(200));
    assertEquals(List.of(), names(withAnotherMachine(later), 299));
    List<Problem> asked = ShipQuestionsTest.asked(withAnotherMachine(later), 300, 300);
    assertEquals(List.of("machine-never-read AE1 hours"), names(asked));
    assertEquals(Optional.of(endOf(291)), asked.get(0).dueSince());
  }

  @Test
  void aReadingOrALastDayClosesTheQuestionOfAMachineNeverRead() {
    Ship read = withAnotherMachine().reading("AE1", ReadingKind.COUNTER, endOf(299), 50);
    assertEquals(List.of(), names(read, 300));
    Ship.Fill gone = row -> row.with(MachineLayout.VALID_TO, Ship.day(250));
    assertEquals(List.of(), names(withAnotherMachine(gone), 300));
  }

  @Test
  void aMachineOfNoComponentNeedsNoHours() {
    Ship.Fill other = row -> row.with(MachineLayout.KIND, "winch");
    assertEquals(List.of(), names(withAnotherMachine(other), 300));
  }

  @Test
  void aVesselWithoutAnyReadingIsNotAskedAboutEachMachine() {
    assertEquals(List.of(), names(new Ship().engine().machine("AE1"), 300));
  }

  /** An engine that runs ten hours a day, read every 50 days up to day 2000. */
  private static Ship tenHoursADay() {
    Ship ship = new Ship().engine();
    for (int day = 0; day <= 2000; day += 50) {
      ship.counter(day, 10 * day);
    }
    return ship;
  }

  /**
   * Injectors are due every 8,000 h; one and a quarter of that is 10,000 h, which day 1300 ends
   * with after an overhaul at 3,000 h on day 300.
   */
  @Test
  void aVesselThatSendsNoOverhaulsAnyMoreIsAskedOnce() {
    Ship ship = tenHoursADay().overhaul("O1", 300);
    assertEquals(List.of(), names(ship, 1300));
    List<Problem> asked = ShipQuestionsTest.asked(ship, 1301, 2000);
    assertEquals(List.of("overhauls-silent overhauls"), names(asked));
    assertEquals(Optional.of(endOf(1301)), asked.get(0).dueSince());
    assertEquals(43, asked.get(0).origin().line()); // O1, after the engine and 41 readings
    assertTrue(asked.get(0).evidence().contains("O1 of " + Ship.day(300)), asked.get(0)::evidence);
    assertTrue(asked.get(0).evidence().contains("ME ran 10010 h"), asked.get(0)::evidence);
    // On day 1401 all other positions, and on day 1701 that of O1, ran 14,000 h: the same question.
    assertEquals(List.of("overhauls-silent overhauls"), names(ship, 2000));
  }

  @Test
  void whatWasOverdueBeforeTheSilenceIsAskedAboutAllTheSame() {
    // Unit 2 has run 14,000 h on day 1401; from O2 on day 800 it is 10,000 h on day 1801.
    Ship ship = tenHoursADay().overhaul("O1", 300, at(1, 1)).overhaul("O2", 800, at(1, 2));
    assertEquals(
        List.of(
            "overhauls-silent overhauls",
            "long-past-interval ME fuel-injector unit 1",
            "long-past-interval ME fuel-injector unit 2"),
        names(ship, 1801));
  }

  @Test
  void anyRecordOfAnOverhaulOrTestEndsTheSilence() {
    Ship tested =
        tenHoursADay().overhaul("O1", 300).overhaul("O2", 1299, because(Reason.TEST_ONLY));
    assertEquals(List.of(), names(tested, 1301));
    // One after the month's end, which is known already, too.
    Ship late = tenHoursADay().overhaul("O1", 300).overhaul("O2", 1310);
    assertEquals(List.of(), names(ShipQuestionsTest.asked(late, 1301, 2000)));
    assertEquals(
        List.of("overhauls-silent overhauls"), names(ShipQuestionsTest.asked(late, 1301, 1309)));
  }

  @Test
  void aMachineThatDoesNotRunMakesNoSilence() {
    Ship laidUp =
        new Ship()
            .engine()
            .counter(0, 0)
            .counter(300, 3000)
            .counter(2000, 3000)
            .overhaul("O1", 300);
    assertEquals(List.of(), names(laidUp, 2000));
  }

  private static List<String> names(Ship ship, int day) {
    return names(ShipQuestionsTest.asked(ship, day, day));
  }

  private static List<String> names(List<Problem> asked) {
    return asked.stream().map(problem -> problem.kind() + " " + problem.record()).toList();
  }
}
