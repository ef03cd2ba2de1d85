package leadline.summary;

import static leadline.summary.EvidenceColumns.ELIGIBLE;
import static leadline.summary.EvidenceColumns.EVENTS;
import static leadline.summary.EvidenceColumns.EXPOSURE;
import static leadline.summary.EvidenceColumns.INSPECTED;
import static leadline.summary.EvidenceColumns.REPAIRED_HOURS_SHARE;
import static leadline.summary.EvidenceColumns.VERDICT;
import static leadline.summary.SharedColumns.HOURS_BAND;
import static leadline.summary.SpringBreakage.BROKEN;
import static leadline.summary.SpringBreakage.BROKEN_SHARE;
import static leadline.summary.SpringBreakage.OPENED;
import static leadline.summary.SpringBreakage.OVERHAULED;
import static leadline.summary.SpringBreakage.SHARE_IF_UNOPENED_BROKEN;
import static leadline.summary.SpringBreakage.SHARE_IF_UNOPENED_SOUND;
import static leadline.summary.SpringBreakage.SPEC;
import static leadline.summary.TestCatalogue.INJECTOR;
import static leadline.summary.TestCatalogue.NRV_SPRING;
import static leadline.summary.TestCatalogue.STARTING_SPRING;
import static leadline.summary.TestCatalogue.STARTING_VALVE;
import static leadline.summary.TestMachine.notOpened;
import static leadline.summary.TestMachine.notOpenedAt;
import static leadline.summary.TestMachine.opened;
import static leadline.summary.TestMachine.openedAt;
import static leadline.summary.TestMachine.state;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.Part;
import leadline.fleet.Reason;
import leadline.history.Condition;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

class SpringBreakageTest {

  private static final String DAY = "2024-03-01";

  /** 1,000 days to the end of 2024 at 20 h: 20,000 h, at 10 injectors 200,000 h. */
  private static TestMachine auklet() {
    return TestMachine.engine("auklet", "TWS-A", 5)
        .observed("2022-04-06", "2024-12-31")
        .running(20, 5);
  }

  private static Rows fleet(Part spring, TestMachine machine) {
    return Rows.of(SPEC, machine.alone())
        .where(SharedColumns.PART, spring.name())
        .sinceStart()
        .fleet();
  }

  private static TableRow band(String band, Part spring, TestMachine machine) {
    return fleet(spring, machine).where(HOURS_BAND, band).only();
  }

  @Test
  void theUnopenedBoundTheShare() {
    // 6 broken of 40 opened, 20 unopened: 6/60 if those were sound, 26/60 if broken.
    TableRow row =
        band(
            "all",
            NRV_SPRING,
            auklet()
                .visits(6, INJECTOR, DAY, Reason.PLANNED, opened(NRV_SPRING, Condition.FAILED))
                .visits(34, INJECTOR, DAY, Reason.PLANNED, opened(NRV_SPRING, Condition.WORKING))
                .visits(20, INJECTOR, DAY, Reason.PLANNED, notOpened(NRV_SPRING)));
    assertEquals(60L, row.need(OVERHAULED));
    assertEquals(40L, row.need(OPENED));
    assertEquals(6L, row.need(BROKEN));
    assertEquals(0.15, row.need(BROKEN_SHARE.estimate()));
    assertEquals(0.10, row.need(SHARE_IF_UNOPENED_SOUND), 1e-15);
    assertEquals(26 / 60.0, row.need(SHARE_IF_UNOPENED_BROKEN), 1e-15);
    // 40 of 60 planned overhauls opened it: less than 0.8.
    assertEquals("selective-opening", row.need(VERDICT));
    assertEquals(6L, row.need(EVENTS));
    assertEquals(40L, row.need(INSPECTED));
    assertEquals(60L, row.need(ELIGIBLE));
    assertEquals(200_000.0, row.need(EXPOSURE));
  }

  @Test
  void limitsAreClopperAndPearsons() {
    TableRow row =
        band(
            "all",
            NRV_SPRING,
            auklet()
                .visit(INJECTOR, DAY, Reason.PLANNED, opened(NRV_SPRING, Condition.FAILED))
                .visits(28, INJECTOR, DAY, Reason.PLANNED, opened(NRV_SPRING, Condition.WORKING)));
    // Newcombe 1998, Statistics in Medicine 17:857, table I, exact method: 1 of 29 gives .0009 to
    // .1776 (from memory).
    assertEquals(0.0009, row.need(BROKEN_SHARE.lower()), 5e-5);
    assertEquals(0.1776, row.need(BROKEN_SHARE.upper()), 5e-5);
    assertEquals("too-few", row.need(VERDICT));
  }

  @Test
  void bandsIncludeTheirLowerEndAndListOnlyWhatWasOverhauled() {
    Rows rows =
        fleet(
            NRV_SPRING,
            auklet()
                .visit(
                    INJECTOR, DAY, Reason.PLANNED, openedAt(12_500, NRV_SPRING, Condition.FAILED))
                .visit(INJECTOR, DAY, Reason.PLANNED, openedAt(4_000, NRV_SPRING, Condition.FAILED))
                .visit(INJECTOR, DAY, Reason.PLANNED, notOpenedAt(7_999, NRV_SPRING))
                .visit(
                    INJECTOR,
                    DAY,
                    Reason.PLANNED,
                    state(
                        NRV_SPRING,
                        TestMachine.foundIn(NRV_SPRING, Condition.WORKING),
                        Optional.of(RunningHours.ofTenths(39_999))))
                .visit(INJECTOR, DAY, Reason.PLANNED));
    assertEquals(
        List.of("all", "0-4000", "4000-8000", "12000-16000", "unknown"), rows.each(HOURS_BAND));
    assertEquals(List.of(5L, 1L, 2L, 1L, 1L), rows.each(OVERHAULED));
    assertEquals(List.of(3L, 1L, 1L, 1L, 0L), rows.each(OPENED));
    assertEquals(List.of(2L, 0L, 1L, 1L, 0L), rows.each(BROKEN));
    // Opened 3 of 5, 1 of 1, 1 of 2, 1 of 1, 0 of 1 planned.
    assertEquals(
        List.of("selective-opening", "too-few", "selective-opening", "too-few", "insufficient"),
        rows.each(VERDICT));
  }

  @Test
  void bandsCarryNoExposure() {
    TestMachine machine =
        auklet().visit(INJECTOR, DAY, Reason.PLANNED, openedAt(100, NRV_SPRING, Condition.WORKING));
    TableRow band = band("0-4000", NRV_SPRING, machine);
    assertEquals(Optional.empty(), band.find(EXPOSURE));
    assertEquals(Optional.empty(), band.find(REPAIRED_HOURS_SHARE));
    TableRow all = band("all", NRV_SPRING, machine);
    assertEquals(200_000.0, all.need(EXPOSURE));
    // 5 of 20 h a day.
    assertEquals(0.25, all.need(REPAIRED_HOURS_SHARE));
  }

  @Test
  void withoutAnOverhaulThereIsOneRowWithoutFigures() {
    TableRow row = fleet(NRV_SPRING, auklet()).only();
    assertEquals("all", row.need(HOURS_BAND));
    assertEquals("insufficient", row.need(VERDICT));
    assertEquals(Optional.empty(), row.find(BROKEN_SHARE.estimate()));
    assertEquals(Optional.empty(), row.find(SHARE_IF_UNOPENED_SOUND));
    assertEquals(Optional.empty(), row.find(SHARE_IF_UNOPENED_BROKEN));
  }

  @Test
  void unopenedOnesAloneLeaveTheShareWhollyOpen() {
    TableRow row =
        band(
            "all",
            NRV_SPRING,
            auklet().visit(INJECTOR, DAY, Reason.PLANNED, notOpened(NRV_SPRING)));
    assertEquals(1L, row.need(OVERHAULED));
    assertEquals("insufficient", row.need(VERDICT));
    assertEquals(Optional.empty(), row.find(BROKEN_SHARE.estimate()));
    assertEquals(Optional.empty(), row.find(BROKEN_SHARE.lower()));
    assertEquals(Optional.empty(), row.find(BROKEN_SHARE.upper()));
    assertEquals(0.0, row.need(SHARE_IF_UNOPENED_SOUND));
    assertEquals(1.0, row.need(SHARE_IF_UNOPENED_BROKEN));
  }

  @Test
  void bandsOfHoursAreTheWrongClockForASpringThatAgesByStarts() {
    Rows rows =
        fleet(
            STARTING_SPRING,
            auklet()
                .visits(
                    5,
                    STARTING_VALVE,
                    DAY,
                    Reason.PLANNED,
                    openedAt(100, STARTING_SPRING, Condition.FAILED))
                .visit(STARTING_VALVE, DAY, Reason.PLANNED, notOpenedAt(9_000, STARTING_SPRING))
                .visit(
                    STARTING_VALVE,
                    DAY,
                    Reason.PLANNED,
                    opened(STARTING_SPRING, Condition.FAILED)));
    assertEquals(List.of("all", "0-4000", "8000-12000", "unknown"), rows.each(HOURS_BAND));
    assertEquals(List.of("ok", "wrong-clock", "wrong-clock", "too-few"), rows.each(VERDICT));
  }

  @Test
  void onlySpringsAreListed() {
    Rows rows = Rows.of(SPEC, auklet().alone());
    assertEquals(
        Set.of(NRV_SPRING.name(), STARTING_SPRING.name()),
        Set.copyOf(rows.each(SharedColumns.PART)));
  }

  @Test
  void aTestOnlyIsNoOverhaul() {
    TableRow row =
        band(
            "all",
            NRV_SPRING,
            auklet()
                .visit(INJECTOR, DAY, Reason.TEST_ONLY, openedAt(1, NRV_SPRING, Condition.FAILED)));
    assertEquals(0L, row.need(OVERHAULED));
    assertEquals(0L, row.need(BROKEN));
  }
}
