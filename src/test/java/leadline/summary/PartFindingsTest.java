package leadline.summary;

import static leadline.summary.EvidenceColumns.ELIGIBLE;
import static leadline.summary.EvidenceColumns.EVENTS;
import static leadline.summary.EvidenceColumns.EXPOSURE;
import static leadline.summary.EvidenceColumns.INSPECTED;
import static leadline.summary.EvidenceColumns.VERDICT;
import static leadline.summary.PartFindings.FAILED;
import static leadline.summary.PartFindings.FAILED_SHARE;
import static leadline.summary.PartFindings.OPENED;
import static leadline.summary.PartFindings.OPENED_UNSTATED;
import static leadline.summary.PartFindings.OVERHAULED;
import static leadline.summary.PartFindings.REJECTED;
import static leadline.summary.PartFindings.RENEWED;
import static leadline.summary.PartFindings.SPEC;
import static leadline.summary.TestCatalogue.INJECTOR;
import static leadline.summary.TestCatalogue.NOZZLE;
import static leadline.summary.TestCatalogue.O_RINGS;
import static leadline.summary.TestMachine.notOpened;
import static leadline.summary.TestMachine.opened;
import static leadline.summary.TestMachine.unstated;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.Part;
import leadline.fleet.Reason;
import leadline.history.Condition;
import org.junit.jupiter.api.Test;

class PartFindingsTest {

  private static final String DAY = "2024-03-01";

  /** 1,000 days to the end of 2024 at 20 h: 20,000 h, at 10 injectors 200,000 h. */
  private static TestMachine auklet() {
    return TestMachine.engine("auklet", "TWS-A", 5)
        .observed("2022-04-06", "2024-12-31")
        .running(20);
  }

  private static TableRow fleet(Part part, TestMachine machine) {
    return Rows.of(SPEC, machine.alone())
        .where(SharedColumns.PART, part.name())
        .sinceStart()
        .fleet()
        .only();
  }

  @Test
  void everyVisitIsOverhauledButOnlyAStatedYesIsOpened() {
    TableRow row =
        fleet(
            NOZZLE,
            auklet()
                .visit(INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.WORKING))
                .visit(
                    INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.FAILED, Action.LAPPED))
                .visit(INJECTOR, DAY, Reason.PLANNED, notOpened(NOZZLE, Action.RENEWED))
                .visit(INJECTOR, DAY, Reason.PLANNED, notOpened(NOZZLE))
                .visit(INJECTOR, DAY, Reason.PLANNED, unstated(NOZZLE))
                .visit(INJECTOR, DAY, Reason.PLANNED)
                .visit(INJECTOR, DAY, Reason.TEST_ONLY, opened(NOZZLE, Condition.FAILED)));
    assertEquals(6L, row.need(OVERHAULED));
    assertEquals(2L, row.need(OPENED));
    assertEquals(1L, row.need(OPENED_UNSTATED));
    assertEquals(1L, row.need(FAILED));
    assertEquals(1L, row.need(RENEWED));
    assertEquals(0.5, row.need(FAILED_SHARE.estimate()));
    assertEquals(1L, row.need(EVENTS));
    assertEquals(2L, row.need(INSPECTED));
    assertEquals(6L, row.need(ELIGIBLE));
    assertEquals(200_000.0, row.need(EXPOSURE));
  }

  @Test
  void limitsAreClopperAndPearsons() {
    TableRow row =
        fleet(
            NOZZLE,
            auklet()
                .visits(15, INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.FAILED))
                .visits(133, INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.WORKING)));
    // Newcombe 1998, Statistics in Medicine 17:857, table I, exact method: 15 of 148 gives .0578 to
    // .1617 (from memory).
    assertEquals(15 / 148.0, row.need(FAILED_SHARE.estimate()));
    assertEquals(0.0578, row.need(FAILED_SHARE.lower()), 5e-5);
    assertEquals(0.1617, row.need(FAILED_SHARE.upper()), 5e-5);
    assertEquals("ok", row.need(VERDICT));
  }

  @Test
  void nothingOpenedGivesNoShare() {
    TableRow row =
        fleet(NOZZLE, auklet().visits(3, INJECTOR, DAY, Reason.PLANNED, notOpened(NOZZLE)));
    assertEquals(3L, row.need(OVERHAULED));
    assertEquals("insufficient", row.need(VERDICT));
    assertEquals(Optional.empty(), row.find(FAILED_SHARE.estimate()));
    assertEquals(Optional.empty(), row.find(FAILED_SHARE.lower()));
    assertEquals(Optional.empty(), row.find(FAILED_SHARE.upper()));
  }

  @Test
  void beyondLimitIsRejectedOnlyWhenRenewedOnCondition() {
    TestMachine machine =
        auklet()
            .visit(
                INJECTOR,
                DAY,
                Reason.PLANNED,
                opened(NOZZLE, Condition.BEYOND_LIMIT, Action.RENEWED),
                opened(O_RINGS, Condition.BEYOND_LIMIT, Action.RENEWED))
            .visit(INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.BEYOND_LIMIT))
            .visit(INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.FAILED, Action.RENEWED))
            .visit(
                INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.WORKING, Action.RENEWED));
    TableRow nozzle = fleet(NOZZLE, machine);
    assertEquals(1L, nozzle.need(REJECTED));
    assertEquals(1L, nozzle.need(FAILED));
    assertEquals(3L, nozzle.need(RENEWED));
    TableRow rings = fleet(O_RINGS, machine);
    assertEquals(0L, rings.need(REJECTED));
    assertEquals(1L, rings.need(RENEWED));
  }

  @Test
  void aMissingPartWasOpenedButDidNotFail() {
    TableRow row =
        fleet(
            NOZZLE,
            auklet().visit(INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.MISSING)));
    assertEquals(1L, row.need(OPENED));
    assertEquals(0L, row.need(FAILED));
  }

  @Test
  void fourOfFivePlannedOverhaulsOpenedIsRoutine() {
    TestMachine machine =
        auklet()
            .visits(8, INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.FAILED))
            .visits(2, INJECTOR, DAY, Reason.PLANNED, notOpened(NOZZLE));
    assertEquals("ok", fleet(NOZZLE, machine).need(VERDICT));
    machine.visit(INJECTOR, DAY, Reason.PLANNED);
    assertEquals("selective-opening", fleet(NOZZLE, machine).need(VERDICT));
  }

  @Test
  void onlyPlannedOverhaulsShowWhetherOpeningIsRoutine() {
    // 7 of 10 planned ones opened; with the breakdowns it would be 27 of 30.
    TestMachine machine =
        auklet()
            .visits(7, INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.FAILED))
            .visits(3, INJECTOR, DAY, Reason.PLANNED, notOpened(NOZZLE))
            .visits(20, INJECTOR, DAY, Reason.BREAKDOWN, opened(NOZZLE, Condition.FAILED));
    assertEquals("selective-opening", fleet(NOZZLE, machine).need(VERDICT));
  }

  @Test
  void unopenedBreakdownsDoNotMakeOpeningSelective() {
    TestMachine machine =
        auklet()
            .visits(6, INJECTOR, DAY, Reason.PLANNED, opened(NOZZLE, Condition.FAILED))
            .visits(20, INJECTOR, DAY, Reason.BREAKDOWN, notOpened(NOZZLE));
    assertEquals("ok", fleet(NOZZLE, machine).need(VERDICT));
  }

  @Test
  void withoutAPlannedOverhaulNoOpeningWasRoutine() {
    TestMachine machine =
        auklet()
            .visits(6, INJECTOR, DAY, Reason.BREAKDOWN, opened(NOZZLE, Condition.FAILED))
            .visit(INJECTOR, DAY, Reason.CONDITION, notOpened(NOZZLE));
    assertEquals("selective-opening", fleet(NOZZLE, machine).need(VERDICT));
  }

  @Test
  void rowsFollowTheCatalogueThenWindowThenStratum() {
    Rows rows = Rows.of(SPEC, auklet().alone()).fleet();
    assertEquals(
        List.of("nozzle", "nrv-spring", "o-rings", "valve-spring"),
        rows.sinceStart().each(SharedColumns.PART));
    assertEquals(
        List.of("since-start", "12-months", "month"),
        rows.where(SharedColumns.PART, "nozzle").each(SharedColumns.WINDOW));
  }

  @Test
  void aQuietMonthHasRowsWithExposure() {
    TableRow row =
        Rows.of(SPEC, auklet().visit(INJECTOR, DAY, Reason.PLANNED).alone())
            .where(SharedColumns.PART, NOZZLE.name())
            .where(SharedColumns.WINDOW, "month")
            .stratum("vessel", "auklet")
            .only();
    assertEquals(0L, row.need(OVERHAULED));
    assertEquals(31 * 20 * 10.0, row.need(EXPOSURE));
    assertEquals("insufficient", row.need(VERDICT));
  }
}
