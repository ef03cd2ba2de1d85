package leadline.summary;

import static leadline.summary.ComponentRates.ENDPOINT;
import static leadline.summary.ComponentRates.RATE;
import static leadline.summary.ComponentRates.SPEC;
import static leadline.summary.ComponentRates.VESSELS;
import static leadline.summary.EvidenceColumns.ELIGIBLE;
import static leadline.summary.EvidenceColumns.EVENTS;
import static leadline.summary.EvidenceColumns.EXPOSURE;
import static leadline.summary.EvidenceColumns.INSPECTED;
import static leadline.summary.EvidenceColumns.REPAIRED_HOURS_SHARE;
import static leadline.summary.EvidenceColumns.VERDICT;
import static leadline.summary.TestCatalogue.COMPRESSOR_VALVE;
import static leadline.summary.TestCatalogue.INJECTOR;
import static leadline.summary.TestCatalogue.NOZZLE;
import static leadline.summary.TestCatalogue.NRV_SPRING;
import static leadline.summary.TestMachine.notOpened;
import static leadline.summary.TestMachine.opened;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Reason;
import leadline.history.Condition;
import leadline.history.VesselHistory;
import org.junit.jupiter.api.Test;

class ComponentRatesTest {

  /** 1,000 days to the end of 2024 at 20 h: 20,000 h, at 10 injectors 200,000 h. */
  private static TestMachine auklet() {
    return TestMachine.engine("auklet", "TWS-A", 5)
        .observed("2022-04-06", "2024-12-31")
        .running(20);
  }

  /** 530 days to the end of 2024 at 20 h: 10,600 h, at 20 injectors 212,000 h. */
  private static TestMachine bunting() {
    return TestMachine.engine("bunting", "TWS-B", 10)
        .observed("2023-07-20", "2024-12-31")
        .running(20);
  }

  private static Rows breakdowns(TestMachine... machines) {
    return rows("breakdown", machines);
  }

  private static Rows rows(String endpoint, TestMachine... machines) {
    VesselHistory[] vessels =
        List.of(machines).stream().map(TestMachine::alone).toArray(VesselHistory[]::new);
    return Rows.of(SPEC, vessels)
        .where(ENDPOINT, endpoint)
        .where(SharedColumns.COMPONENT, INJECTOR.name());
  }

  @Test
  void threeBreakdownsIn412000Hours() {
    TableRow row =
        breakdowns(
                auklet()
                    .visit(INJECTOR, "2023-03-01", Reason.BREAKDOWN)
                    .visit(INJECTOR, "2024-03-01", Reason.BREAKDOWN),
                bunting().visit(INJECTOR, "2024-03-02", Reason.BREAKDOWN))
            .sinceStart()
            .fleet()
            .only();
    assertEquals(3L, row.need(EVENTS));
    assertEquals(412_000.0, row.need(EXPOSURE));
    assertEquals(3 / 412_000.0 * 1e6, row.need(RATE.estimate()), 1e-12);
    // NIST/SEMATECH e-Handbook 8.4.5.1 with the chi-squared table of 1.3.6.7.4:
    // chi2(.025; 6) / 2 / 0.412 = 1.237 / 0.824 and chi2(.975; 8) / 2 / 0.412 = 17.535 / 0.824.
    assertEquals(1.50, row.need(RATE.lower()), 0.005);
    assertEquals(21.28, row.need(RATE.upper()), 0.005);
    assertEquals(2L, row.need(VESSELS));
    assertEquals("too-few", row.need(VERDICT));
  }

  @Test
  void noBreakdownHasALowerLimitOfZeroAndAnUpperOneAboveIt() {
    // 480 days at 20 h are 9,600 h, at 10 injectors 96,000 h.
    TableRow row =
        breakdowns(
                TestMachine.engine("auklet", "TWS-A", 5)
                    .observed("2023-09-08", "2024-12-31")
                    .running(20))
            .sinceStart()
            .fleet()
            .only();
    assertEquals(96_000.0, row.need(EXPOSURE));
    assertEquals(0.0, row.need(RATE.estimate()));
    assertEquals(0.0, row.need(RATE.lower()));
    // NIST/SEMATECH e-Handbook 8.4.5.1, 1.3.6.7.4: chi2(.975; 2) / 2 / 0.096 = 7.378 / 0.192.
    assertEquals(38.43, row.need(RATE.upper()), 0.005);
    assertEquals("too-few", row.need(VERDICT));
  }

  @Test
  void reasonsAreNeverAddedUp() {
    TestMachine machine =
        auklet()
            .visits(5, INJECTOR, "2024-03-01", Reason.CONDITION)
            .visit(INJECTOR, "2024-03-01", Reason.BREAKDOWN)
            .visits(7, INJECTOR, "2024-03-01", Reason.PLANNED);
    TableRow condition = rows("condition", machine).sinceStart().fleet().only();
    assertEquals(5L, condition.need(EVENTS));
    assertEquals("ok", condition.need(VERDICT));
    assertEquals(1L, breakdowns(machine).sinceStart().fleet().only().need(EVENTS));
    assertEquals(13L, condition.need(ELIGIBLE));
  }

  @Test
  void anEventCountsAfterTheWindowsStartAndUpToItsEnd() {
    // A visit of 30 November is at 24:00 UTC, where the month starts: it belongs to November.
    Rows rows =
        breakdowns(
            auklet()
                .visit(INJECTOR, "2024-11-30", Reason.BREAKDOWN)
                .visit(INJECTOR, "2024-12-01", Reason.BREAKDOWN)
                .visit(INJECTOR, "2024-12-31", Reason.BREAKDOWN)
                .visit(INJECTOR, "2025-01-01", Reason.BREAKDOWN));
    TableRow month = rows.where(SharedColumns.WINDOW, "month").fleet().only();
    assertEquals(2L, month.need(EVENTS));
    assertEquals(31 * 20 * 10.0, month.need(EXPOSURE));
    TableRow year = rows.where(SharedColumns.WINDOW, "12-months").fleet().only();
    assertEquals(3L, year.need(EVENTS));
    assertEquals(366 * 20 * 10.0, year.need(EXPOSURE));
  }

  @Test
  void anEventAtTheObservedStartDoesNotCount() {
    TestMachine machine =
        auklet()
            .visit(INJECTOR, "2022-04-06", Reason.BREAKDOWN)
            .visit(INJECTOR, "2022-04-07", Reason.BREAKDOWN);
    assertEquals(1L, breakdowns(machine).sinceStart().fleet().only().need(EVENTS));
  }

  @Test
  void aTestOnlyIsNoOverhaul() {
    TestMachine machine =
        auklet()
            .visit(INJECTOR, "2024-03-01", Reason.TEST_ONLY, opened(NOZZLE, Condition.FAILED))
            .visit(INJECTOR, "2024-03-02", Reason.PLANNED);
    TableRow row = breakdowns(machine).sinceStart().fleet().only();
    assertEquals(1L, row.need(ELIGIBLE));
    assertEquals(0L, row.need(INSPECTED));
  }

  @Test
  void anOverhaulIsInspectedWhereAnyPartWasOpened() {
    TestMachine machine =
        auklet()
            .visit(INJECTOR, "2024-03-01", Reason.PLANNED, opened(NOZZLE, Condition.WORKING))
            .visit(INJECTOR, "2024-03-02", Reason.PLANNED, notOpened(NRV_SPRING))
            .visit(INJECTOR, "2024-03-03", Reason.PLANNED);
    TableRow row = breakdowns(machine).sinceStart().fleet().only();
    assertEquals(3L, row.need(ELIGIBLE));
    assertEquals(1L, row.need(INSPECTED));
  }

  @Test
  void repairedHoursAreSharedOutOfAllHours() {
    // 5 of 20 h a day on 200,000 h, none on 212,000 h: 50,000 / 412,000.
    TableRow row =
        breakdowns(
                TestMachine.engine("auklet", "TWS-A", 5)
                    .observed("2022-04-06", "2024-12-31")
                    .running(20, 5),
                bunting())
            .sinceStart()
            .fleet()
            .only();
    assertEquals(50_000.0 / 412_000.0, row.need(REPAIRED_HOURS_SHARE), 1e-15);
  }

  @Test
  void aMachineNeverObservedHasRowsWithoutFigures() {
    Rows rows = breakdowns(TestMachine.engine("dunlin", "TWS-C", 6), auklet());
    TableRow dunlin = rows.sinceStart().stratum("vessel", "dunlin").only();
    assertEquals(0.0, dunlin.need(EXPOSURE));
    assertEquals(0L, dunlin.need(VESSELS));
    assertEquals("insufficient", dunlin.need(VERDICT));
    assertEquals(Optional.empty(), dunlin.find(RATE.estimate()));
    assertEquals(Optional.empty(), dunlin.find(RATE.lower()));
    assertEquals(Optional.empty(), dunlin.find(RATE.upper()));
    assertEquals(Optional.empty(), dunlin.find(REPAIRED_HOURS_SHARE));
    assertEquals(1L, rows.sinceStart().fleet().only().need(VESSELS));
    assertEquals("insufficient", rows.sinceStart().stratum("model", "TWS-C").only().need(VERDICT));
  }

  @Test
  void strataAreTheFleetTheModelsAndTheVesselsThatCarryTheComponent() {
    TestMachine compressor =
        TestMachine.compressor("auklet", "ac1", "KM-2")
            .observed("2024-11-30", "2024-12-31")
            .running(3);
    Rows rows =
        Rows.of(
                SPEC,
                new VesselHistory("auklet", List.of(auklet().history(), compressor.history())),
                bunting().alone())
            .sinceStart()
            .where(ENDPOINT, "condition");
    Rows injectors = rows.where(SharedColumns.COMPONENT, INJECTOR.name());
    assertEquals(
        List.of("fleet", "model", "model", "vessel", "vessel"),
        injectors.each(SharedColumns.LEVEL));
    assertEquals(
        List.of("all", "TWS-A", "TWS-B", "auklet", "bunting"),
        injectors.each(SharedColumns.STRATUM));
    Rows compressors = rows.where(SharedColumns.COMPONENT, COMPRESSOR_VALVE.name());
    assertEquals(List.of("all", "KM-2", "auklet"), compressors.each(SharedColumns.STRATUM));
    // One per machine: 31 days at 3 h.
    assertEquals(List.of(93.0, 93.0, 93.0), compressors.each(EXPOSURE));
  }

  @Test
  void aVesselWithEnginesOfTwoModelsIsOneVessel() {
    VesselHistory both =
        new VesselHistory(
            "auklet",
            List.of(
                auklet().history(),
                TestMachine.engine("auklet", "TWS-C", 6)
                    .observed("2022-04-06", "2024-12-31")
                    .running(20)
                    .history()));
    Rows rows =
        Rows.of(SPEC, both)
            .sinceStart()
            .where(ENDPOINT, "breakdown")
            .where(SharedColumns.COMPONENT, INJECTOR.name());
    assertEquals(List.of("all", "TWS-A", "TWS-C", "auklet"), rows.each(SharedColumns.STRATUM));
    assertEquals(List.of(1L, 1L, 1L, 1L), rows.each(VESSELS));
    // 10 and 12 injectors at 20,000 h.
    assertEquals(List.of(440_000.0, 200_000.0, 240_000.0, 440_000.0), rows.each(EXPOSURE));
  }

  @Test
  void machinesOfOneModelOnAVesselAddUp() {
    TestMachine first =
        TestMachine.compressor("auklet", "ac1", "KM-2")
            .observed("2024-11-30", "2024-12-31")
            .running(3)
            .visit(COMPRESSOR_VALVE, "2024-12-05", Reason.BREAKDOWN);
    TestMachine second =
        TestMachine.compressor("auklet", "ac2", "KM-2")
            .observed("2024-11-30", "2024-12-31")
            .running(5)
            .visits(2, COMPRESSOR_VALVE, "2024-12-07", Reason.BREAKDOWN);
    TableRow row =
        Rows.of(SPEC, new VesselHistory("auklet", List.of(first.history(), second.history())))
            .sinceStart()
            .where(ENDPOINT, "breakdown")
            .stratum("vessel", "auklet")
            .only();
    assertEquals(3L, row.need(EVENTS));
    // 31 days at 3 h and at 5 h, one position each.
    assertEquals(248.0, row.need(EXPOSURE));
  }

  @Test
  void aBreakdownOfAComponentThatTheMachineDoesNotCarryCountsNowhere() {
    Rows rows =
        Rows.of(SPEC, auklet().visit(COMPRESSOR_VALVE, "2024-03-01", Reason.BREAKDOWN).alone());
    assertEquals(List.of(), rows.where(SharedColumns.COMPONENT, COMPRESSOR_VALVE.name()).rows());
    assertEquals(0L, rows.each(EVENTS).stream().mapToLong(Long::longValue).sum());
  }
}
