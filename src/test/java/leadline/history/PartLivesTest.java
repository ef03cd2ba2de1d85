package leadline.history;

import static leadline.history.Ship.action;
import static leadline.history.Ship.at;
import static leadline.history.Ship.because;
import static leadline.history.Ship.fitted;
import static leadline.history.Ship.found;
import static leadline.history.Ship.hours;
import static leadline.history.Ship.hoursSinceNew;
import static leadline.history.Ship.inService;
import static leadline.history.Ship.mode;
import static leadline.history.Ship.newOnDayZero;
import static leadline.history.Ship.opened;
import static leadline.history.Ship.removed;
import static leadline.history.Ship.tenHoursADay;
import static leadline.history.Ship.tested;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.Reason;
import leadline.fleet.Statement;
import leadline.fleet.TestResult;
import org.junit.jupiter.api.Test;

/**
 * Lives of parts, each ending by hand. A failure found at an opening lies between two openings, not
 * at the second: interval censoring as in W. Nelson, Applied Life Data Analysis (1982), chapter 9,
 * from memory. Delayed entry as in Meeker and Escobar, Statistical Methods for Reliability Data,
 * chapter 11, from memory. Which part may fail unseen is common practice, no source. All injectors
 * are new on day 0 and run ten hours a day, so that day 800 is 8,000 h.
 */
class PartLivesTest {

  private static final String SPRING = "nrv-spring";
  private static final String GUIDE = "spindle-guide";

  @Test
  void aFailureThatAlwaysShowsHasAnExactAge() {
    assertLives(
        GUIDE,
        overhauled(800, GUIDE, opened(FoundWord.STUCK, Action.RENEWED)),
        "1 new from 0: failed at 8000, failed",
        "2 renewed from 0: working at 12000, still-fitted");
  }

  @Test
  void aFailureRevealedInServiceHasAnExactAgeOpenedOrNot() {
    assertLives(
        SPRING,
        overhauled(800, SPRING, found(FoundWord.BROKEN), inService(), action(Action.RENEWED)),
        "1 new from 0: failed at 8000, failed",
        "2 renewed from 0: working at 0, still-fitted");
    Ship ship = overhauled(800, SPRING, opened(FoundWord.BROKEN, Action.RENEWED), inService());
    assertLives(
        SPRING,
        ship,
        "1 new from 0: failed at 8000, failed",
        "2 renewed from 0: working at 0, still-fitted");
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void foundFailedAndNeverVerifiedTheAgeLiesBetweenNewAndNow() {
    assertLives(
        SPRING,
        overhauled(800, SPRING, opened(FoundWord.BROKEN, Action.RENEWED)),
        "1 new from 0: failed in (0, 8000], failed",
        "2 renewed from 0: working at 0, still-fitted");
  }

  @Test
  void verifiedWorkingAndKeptMovesTheLowerBound() {
    assertLives(
        SPRING,
        overhauled(800, SPRING, opened(FoundWord.SOUND, Action.CLEANED))
            .overhaul("O2", 1500)
            .finding("O2", SPRING, opened(FoundWord.CRACKED, Action.RENEWED)),
        "1 new from 0: failed in (8000, 15000], failed",
        "2 renewed from 0: working at 0, still-fitted");
  }

  @Test
  void foundFailedAtTheVeryAgeItWasLastVerifiedIsExact() {
    // Sound at O1, refitted, out again the same day and broken.
    assertLives(
        SPRING,
        overhauled(800, SPRING, opened(FoundWord.SOUND, Action.NONE))
            .overhaul("O2", 800)
            .finding("O2", SPRING, opened(FoundWord.BROKEN, Action.RENEWED)),
        "1 new from 0: failed at 8000, failed",
        "2 renewed from 0: working at 0, still-fitted");
  }

  @Test
  void verifiedWorkingThenRenewedIsCensoredNow() {
    assertLives(
        SPRING,
        overhauled(800, SPRING, opened(FoundWord.SOUND, Action.RENEWED)),
        "1 new from 0: working at 8000, renewed",
        "2 renewed from 0: working at 0, still-fitted");
  }

  @Test
  void renewedOnConditionThoughWorkingIsRejected() {
    Ship ship = overhauled(800, SPRING, opened(FoundWord.CORRODED, Action.RENEWED));
    assertLives(
        SPRING,
        ship,
        "1 new from 0: rejected at 8000, rejected",
        "2 renewed from 0: working at 0, still-fitted");
    assertTrue(ship.rebuilt().state("O1", SPRING).isRejected());
  }

  @Test
  void wornAndKeptIsVerifiedWorking() {
    assertLives(
        SPRING,
        overhauled(800, SPRING, opened(FoundWord.WORN, Action.NONE)),
        "1 new from 0: working at 8000, still-fitted");
  }

  @Test
  void aRoutineRenewalIsNeverARejection() {
    Ship ship = overhauled(800, "o-rings", opened(FoundWord.WORN, Action.RENEWED));
    assertLives(
        "o-rings",
        ship,
        "1 new from 0: working at 8000, renewed",
        "2 renewed from 0: working at 12000, still-fitted");
    assertFalse(ship.rebuilt().state("O1", "o-rings").isRejected());
  }

  @Test
  void ofARoutinelyRenewedPartWithoutAFindingNothingIsAssumed() {
    assertLives(
        "o-rings",
        newOnDayZero().overhaul("O1", 800),
        "1 new from 0: working at 20000, still-fitted");
  }

  @Test
  void replacedUnopenedIsCensoredNowIfItsFailureAlwaysShows() {
    assertLives(
        GUIDE,
        overhauled(800, GUIDE, opened(Statement.NO), action(Action.RENEWED)),
        "1 new from 0: working at 8000, replaced-unopened",
        "2 renewed from 0: working at 12000, still-fitted");
  }

  @Test
  void replacedUnopenedIsCensoredWhenLastVerifiedIfItMayFailUnseen() {
    assertLives(
        SPRING,
        overhauled(800, SPRING, opened(FoundWord.SOUND, Action.NONE))
            .overhaul("O2", 1500)
            .finding("O2", SPRING, action(Action.RENEWED)),
        "1 new from 0: working at 8000, replaced-unopened",
        "2 renewed from 0: working at 0, still-fitted");
  }

  @Test
  void notOpenedOrUnstatedAndKeptIsNoInformation() {
    for (Ship.Fill silence :
        List.of(opened(Statement.NO), opened(Statement.YES), found(FoundWord.SOUND))) {
      assertLives(
          SPRING,
          overhauled(800, SPRING, silence, action(Action.CLEANED)),
          "1 new from 0: working at 0, still-fitted");
    }
    assertLives(
        SPRING, newOnDayZero().overhaul("O1", 800), "1 new from 0: working at 0, still-fitted");
  }

  @Test
  void brokenButNotSaidToBeOpenedOrToHaveShownIsNoFailure() {
    Ship ship = overhauled(800, SPRING, found(FoundWord.BROKEN), action(Action.RENEWED));
    assertLives(
        SPRING,
        ship,
        "1 new from 0: working at 0, replaced-unopened",
        "2 renewed from 0: working at 0, still-fitted");
    assertEquals(new Inspection.Unstated(), ship.rebuilt().state("O1", SPRING).inspection());
    assertEquals(List.of("found-without-opened O1 nrv-spring"), ship.rebuilt().problems());
  }

  @Test
  void stillFittedIsCensoredNowOrWhenLastVerified() {
    Ship ship = newOnDayZero();
    assertLives(GUIDE, ship, "1 new from 0: working at 20000, still-fitted");
    assertLives(SPRING, ship, "1 new from 0: working at 0, still-fitted");
  }

  @Test
  void onTheShelfIsCensoredNowOrWhenLastVerified() {
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 800, removed("A"), fitted("B"))
            .finding("O1", SPRING, opened(FoundWord.SOUND, Action.NONE));
    assertEquals(
        List.of("1 new from 0: working at 8000, on-shelf"), ship.rebuilt().lives("A", GUIDE));
    assertEquals(
        List.of("1 new from 0: working at 8000, on-shelf"), ship.rebuilt().lives("A", SPRING));
    assertEquals(
        List.of("1 new from 0: working at 0, on-shelf"), ship.rebuilt().lives("A", "nrv-seat"));
  }

  @Test
  void aLeakLappedEndsTheFirstFailureLifeAndNoOtherRunsUntilRenewed() {
    Ship ship =
        overhauled(400, "nrv-seat", opened(FoundWord.LEAKING, Action.LAPPED))
            .overhaul("O2", 900)
            .finding("O2", "nrv-seat", opened(FoundWord.LEAKING, Action.LAPPED))
            .overhaul("O3", 1200)
            .finding("O3", "nrv-seat", opened(FoundWord.WORN, Action.RENEWED));
    assertLives(
        "nrv-seat",
        ship,
        "1 new from 0: failed in (0, 4000], failed",
        "2 renewed from 0: working at 0, still-fitted");
    // Lapping is no renewal: the seat keeps its age.
    assertEquals(hours(9000), ship.rebuilt().state("O2", "nrv-seat").age().orElseThrow());
    assertTrue(ship.rebuilt().state("O2", "nrv-seat").isFoundFailed());
    assertEquals(List.of(), ship.rebuilt().problems());
  }

  @Test
  void failedAndKeptEndsTheLifeAndIsAskedAbout() {
    for (Ship.Fill kept :
        List.of(
            opened(FoundWord.BROKEN, Action.NONE),
            opened(FoundWord.BROKEN, Action.CLEANED),
            opened(FoundWord.CRACKED, Action.LAPPED))) {
      Ship ship = overhauled(800, SPRING, kept);
      assertLives(SPRING, ship, "1 new from 0: failed in (0, 8000], failed");
      assertEquals(List.of("broken-and-kept O1 nrv-spring"), ship.rebuilt().problems());
    }
    Ship noAction = overhauled(800, "nozzle", opened(Statement.YES), found(FoundWord.BLOCKED));
    assertLives("nozzle", noAction, "1 new from 0: failed in (0, 8000], failed");
    assertEquals(List.of("failed-and-untouched O1 nozzle"), noAction.rebuilt().problems());
  }

  @Test
  void aMissingPartIsNeitherFailedNorWorking() {
    Ship kept = overhauled(800, SPRING, opened(FoundWord.MISSING, Action.NONE));
    assertLives(SPRING, kept, "1 new from 0: working at 0, still-fitted");
    assertEquals(List.of("part-missing O1 nrv-spring"), kept.rebuilt().problems());
    assertEquals(
        new Inspection.Opened(Condition.MISSING, Set.of(FoundWord.MISSING)),
        kept.rebuilt().state("O1", SPRING).inspection());
    assertLives(
        SPRING,
        overhauled(800, SPRING, opened(FoundWord.MISSING, Action.RENEWED)),
        "1 new from 0: working at 0, replaced-unopened",
        "2 renewed from 0: working at 0, still-fitted");
  }

  @Test
  void aPassedTestVerifiesThePartsItProvesAndNoOthers() {
    Ship ship =
        newOnDayZero()
            .overhaul("T1", 500, tested(TestResult.PASSED))
            .overhaul("O1", 800)
            .finding("O1", "main-spring", opened(FoundWord.BROKEN, Action.RENEWED))
            .finding("O1", SPRING, opened(FoundWord.BROKEN, Action.RENEWED));
    assertEquals(
        "1 new from 0: failed in (5000, 8000], failed",
        ship.rebuilt().lives("@1/1", "main-spring").get(0));
    assertEquals(
        "1 new from 0: failed in (0, 8000], failed", ship.rebuilt().lives("@1/1", SPRING).get(0));
    assertEquals(
        new Inspection.NoFinding(), ship.rebuilt().state("T1", "main-spring").inspection());
  }

  @Test
  void aFailedTestVerifiesNothingNorDoesTheTestAfterAnOverhaul() {
    Ship failed = newOnDayZero().overhaul("T1", 500, tested(TestResult.FAILED));
    assertLives("nozzle", failed, "1 new from 0: working at 0, still-fitted");
    Ship asLeft =
        newOnDayZero().overhaul("O1", 500, tested(TestResult.PASSED), because(Reason.PLANNED));
    assertLives("nozzle", asLeft, "1 new from 0: working at 0, still-fitted");
  }

  @Test
  void aTestDoesNotVerifyAPartRenewedAtIt() {
    assertLives(
        "nozzle",
        newOnDayZero()
            .overhaul("T1", 500, tested(TestResult.PASSED))
            .finding("T1", "nozzle", action(Action.RENEWED)),
        "1 new from 0: working at 0, replaced-unopened",
        "2 renewed from 0: working at 0, still-fitted");
  }

  @Test
  void severalFindingsOfOnePartAreTakenTogether() {
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 800)
            .finding("O1", "nozzle", mode(1), opened(FoundWord.WORN, Action.CLEANED))
            .finding("O1", "nozzle", mode(2), found(FoundWord.BLOCKED), action(Action.RENEWED));
    assertLives(
        "nozzle",
        ship,
        "1 new from 0: failed in (0, 8000], failed",
        "2 renewed from 0: working at 0, still-fitted");
    PartState state = ship.rebuilt().state("O1", "nozzle");
    assertEquals(
        new Inspection.Opened(Condition.FAILED, Set.of(FoundWord.WORN, FoundWord.BLOCKED)),
        state.inspection());
    assertEquals(Set.of(Action.CLEANED, Action.RENEWED), state.actions());
  }

  @Test
  void ofUnknownOriginALifeHasNoAgeButAnEnd() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 800)
            .finding("O1", SPRING, opened(FoundWord.BROKEN, Action.RENEWED))
            .finding("O1", GUIDE, opened(FoundWord.WORN, Action.RENEWED))
            .finding("O1", "nozzle", opened(FoundWord.SOUND, Action.NONE));
    assertEquals("1 unknown from 0: no age, failed", ship.rebuilt().lives("@1/1", SPRING).get(0));
    assertEquals("1 unknown from 0: no age, rejected", ship.rebuilt().lives("@1/1", GUIDE).get(0));
    assertLives("nozzle", ship, "1 unknown from 0: no age, still-fitted");
    assertEquals(Optional.empty(), ship.rebuilt().state("O1", SPRING).age());
  }

  @Test
  void hoursSinceNewDatesAPartOfUnknownOriginWithDelayedEntryIfItsFailureAlwaysShows() {
    // 11,000 h old on day 800, of which 8,000 h observed: known from 3,000 h on.
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 800)
            .finding("O1", GUIDE, opened(FoundWord.SCORED, Action.RENEWED), hoursSinceNew(11_000))
            .finding("O1", SPRING, opened(FoundWord.BROKEN, Action.RENEWED), hoursSinceNew(11_000));
    assertEquals(
        "1 hours-since-new from 3000: rejected at 11000, rejected",
        ship.rebuilt().lives("@1/1", GUIDE).get(0));
    // One that may fail unseen does not leave the records by failing: no delayed entry.
    assertEquals(
        "1 hours-since-new from 0: failed in (0, 11000], failed",
        ship.rebuilt().lives("@1/1", SPRING).get(0));
    assertEquals(hours(11_000), ship.rebuilt().state("O1", SPRING).age().orElseThrow());
  }

  /** Of parts 4,100 h old when records begin, those that an opening found broken are gone. */
  @Test
  void aHiddenPartThatMayHaveBeenOpenedBeforeTheRecordsHasAnAgeButNoLifeOnTheCurve() {
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 800)
            .finding("O1", GUIDE, opened(FoundWord.SCORED, Action.RENEWED), hoursSinceNew(12_100))
            .finding("O1", SPRING, opened(FoundWord.BROKEN, Action.RENEWED), hoursSinceNew(12_100));
    assertEquals(
        "1 before-records from 0: no age, failed", ship.rebuilt().lives("@1/1", SPRING).get(0));
    assertEquals(hours(12_100), ship.rebuilt().state("O1", SPRING).age().orElseThrow());
    assertEquals(
        "1 hours-since-new from 4100: rejected at 12100, rejected",
        ship.rebuilt().lives("@1/1", GUIDE).get(0));
  }

  @Test
  void hoursSinceNewDatesAnEarlierVerificationToo() {
    // Sound on day 300; 9,000 h old on day 800, so 4,000 h old then.
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 300)
            .finding("O1", SPRING, opened(FoundWord.SOUND, Action.NONE))
            .overhaul("O2", 800)
            .finding("O2", SPRING, opened(FoundWord.BROKEN, Action.RENEWED), hoursSinceNew(9000));
    assertEquals(
        "1 hours-since-new from 0: failed in (4000, 9000], failed",
        ship.rebuilt().lives("@1/1", SPRING).get(0));
    assertEquals(hours(4000), ship.rebuilt().state("O1", SPRING).age().orElseThrow());
  }

  @Test
  void aPartYoungerThanItsObservationWasRenewedUnrecordedAndIsKnownFromNew() {
    // 2,000 h old on day 800: renewed after the verification on day 300, which was of another.
    Ship ship =
        tenHoursADay()
            .overhaul("O1", 300)
            .finding("O1", SPRING, opened(FoundWord.SOUND, Action.NONE))
            .overhaul("O2", 800)
            .finding("O2", SPRING, opened(FoundWord.BROKEN, Action.RENEWED), hoursSinceNew(2000))
            .finding("O2", GUIDE, opened(FoundWord.STUCK, Action.RENEWED), hoursSinceNew(2000));
    assertEquals(
        "1 hours-since-new from 0: failed in (0, 2000], failed",
        ship.rebuilt().lives("@1/1", SPRING).get(0));
    assertEquals(Optional.empty(), ship.rebuilt().state("O1", SPRING).age());
    assertEquals(
        "1 hours-since-new from 0: failed at 2000, failed",
        ship.rebuilt().lives("@1/1", GUIDE).get(0));
  }

  @Test
  void agesThatDisagreeAreReportedAndTheRebuiltAgeIsUsed() {
    Ship within =
        overhauled(800, GUIDE, opened(FoundWord.STUCK, Action.RENEWED), hoursSinceNew(8024));
    assertEquals(List.of(), within.rebuilt().problems());
    Ship beyond =
        overhauled(800, GUIDE, opened(FoundWord.STUCK, Action.RENEWED), hoursSinceNew(7975.9));
    assertEquals(List.of("ages-disagree O1 spindle-guide"), beyond.rebuilt().problems());
    assertEquals(
        "1 new from 0: failed at 8000, failed", beyond.rebuilt().lives("@1/1", GUIDE).get(0));
  }

  @Test
  void aPartGoesWithItsItemAndKeepsItsAgeThere() {
    // Renewed in A on day 300; A at 2/1 from day 500 to 900: 4,000 h.
    Ship ship =
        newOnDayZero()
            .overhaul("O1", 300, removed("A"), fitted("B"))
            .finding("O1", SPRING, opened(FoundWord.SOUND, Action.RENEWED))
            .overhaul("O2", 500, at(2, 1), fitted("A"))
            .overhaul("O3", 900, at(2, 1), removed("A"), fitted("C"))
            .finding("O3", SPRING, opened(FoundWord.BROKEN, Action.RENEWED));
    assertEquals(
        List.of(
            "1 new from 0: working at 3000, renewed",
            "2 renewed from 0: failed in (0, 4000], failed",
            "3 renewed from 0: working at 0, on-shelf"),
        ship.rebuilt().lives("A", SPRING));
  }

  /** Injector 1/1 overhauled once, with one finding. */
  private static Ship overhauled(int day, String part, Ship.Fill... finding) {
    return newOnDayZero().overhaul("O1", day).finding("O1", part, finding);
  }

  private static void assertLives(String part, Ship ship, String... lives) {
    assertEquals(List.of(lives), ship.rebuilt().lives("@1/1", part));
  }
}
