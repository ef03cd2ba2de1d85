package leadline.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.FoundWord;
import leadline.fleet.HoursLayout;
import leadline.fleet.MachineLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.fleet.Statement;
import leadline.history.ArrivedRow;
import leadline.history.CurrentRecords;
import leadline.history.History;
import leadline.origin.BatchTimes;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.quantity.Days;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An engine of one cylinder, read as each overhaul was done; worked out by hand. */
class JobCardsTest {

  private static final String VESSEL = "hesper-lark";
  private static final ReportMonth MONTH = ReportMonth.parse("2024-02");
  private static final Instant COMMITTED = Instant.parse("2024-03-01T06:00:00Z");

  private final List<ArrivedRow> rows = new ArrayList<>();

  @BeforeEach
  void anEngine() {
    arrives(
        Cells.of(RecordKind.MACHINES)
            .with(MachineLayout.VESSEL, VESSEL)
            .with(MachineLayout.MACHINE, "ME")
            .with(MachineLayout.KIND, "main-engine")
            .with(MachineLayout.MODEL, "QX-60")
            .with(MachineLayout.CYLINDERS, 1L));
    reading("2022-12-31", 0);
    reading("2023-02-10", 900);
    reading("2023-04-10", 2_300);
  }

  @Test
  void aPieceIsFollowedFromItsRenewal() {
    overhaul("O1", "2023-02-10", Optional.of(340.0));
    finding("O1", FoundWord.BROKEN, Action.RENEWED);
    overhaul("O2", "2023-04-10", Optional.empty());
    finding("O2", FoundWord.SOUND, Action.LAPPED);
    reading("2024-02-29", 10_400);
    TableRow spring = row("nrv-spring");
    assertEquals(9_500, spring.need(JobCards.AGE));
    assertEquals("2023-02-10", spring.need(JobCards.SEEN_FROM));
    assertEquals(1_400, spring.need(JobCards.WORKED_AT));
    assertEquals(1, spring.need(JobCards.LAPS));
    assertEquals("no", spring.need(JobCards.KEPT_FAILED));
    assertEquals("O2", spring.need(JobCards.LAST_OVERHAUL));
    assertEquals("2023-04-10", spring.need(JobCards.LAST_ON));
    assertEquals("opened", spring.need(JobCards.LAST_OPENED));
    assertEquals("sound", spring.need(JobCards.LAST_FOUND));
    assertEquals("lapped", spring.need(JobCards.LAST_ACTION));
    assertEquals(340, spring.need(JobCards.PRESSURE));
    assertEquals("2023-02-10", spring.need(JobCards.PRESSURE_ON));
  }

  @Test
  void aRenewalBeginsThePieceAnew() {
    overhaul("O1", "2023-02-10", Optional.empty());
    finding("O1", FoundWord.SOUND, Action.LAPPED);
    overhaul("O2", "2023-04-10", Optional.empty());
    finding("O2", FoundWord.WORN, Action.RENEWED);
    reading("2024-02-29", 10_400);
    TableRow spring = row("nrv-spring");
    assertEquals(8_100, spring.need(JobCards.AGE));
    assertEquals(0, spring.need(JobCards.LAPS));
    assertTrue(spring.find(JobCards.WORKED_AT).isEmpty());
    assertEquals("worn", spring.need(JobCards.LAST_FOUND));
  }

  @Test
  void aPieceFoundFailedAndKeptSaysSo() {
    overhaul("O1", "2023-02-10", Optional.empty());
    finding("O1", FoundWord.BROKEN, Action.NONE);
    reading("2024-02-29", 10_400);
    assertEquals("yes", row("nrv-spring").need(JobCards.KEPT_FAILED));
  }

  @Test
  void aPieceOfUnknownOriginIsSeenFromTheStartOfRecords() {
    overhaul("O1", "2023-02-10", Optional.empty());
    finding("O1", FoundWord.SOUND, Action.CLEANED);
    reading("2024-02-29", 10_400);
    TableRow spring = row("nrv-spring");
    assertTrue(spring.find(JobCards.AGE).isEmpty());
    assertTrue(spring.find(JobCards.WORKED_AT).isEmpty());
    assertEquals("2022-12-31", spring.need(JobCards.SEEN_FROM));
    assertEquals(10_400, spring.need(JobCards.SEEN));
  }

  @Test
  void aPartWithoutAFindingHasNoLastFinding() {
    overhaul("O1", "2023-02-10", Optional.empty());
    finding("O1", FoundWord.SOUND, Action.NONE);
    reading("2024-02-29", 10_400);
    assertTrue(
        cards().stream()
            .filter(row -> !row.need(SharedColumns.PART).equals("nrv-spring"))
            .allMatch(row -> row.find(JobCards.LAST_ON).isEmpty()));
  }

  @Test
  void aMachineWithNothingDueSoonHasNoCards() {
    overhaul("O1", "2023-02-10", Optional.empty());
    reading("2024-02-29", 2_500);
    assertTrue(cards().isEmpty());
  }

  private void reading(String day, long hours) {
    arrives(
        Cells.of(RecordKind.HOURS)
            .with(HoursLayout.VESSEL, VESSEL)
            .with(HoursLayout.MACHINE, "ME")
            .with(HoursLayout.READ_AT, Days.endOf(LocalDate.parse(day)))
            .with(HoursLayout.HOURS, RunningHours.ofHours(hours))
            .with(HoursLayout.KIND, ReadingKind.COUNTER));
  }

  private void overhaul(String id, String day, Optional<Double> pressure) {
    Cells.Builder cells =
        Cells.of(RecordKind.OVERHAULS)
            .with(OverhaulLayout.VESSEL, VESSEL)
            .with(OverhaulLayout.OVERHAUL, id)
            .with(OverhaulLayout.MACHINE, "ME")
            .with(OverhaulLayout.COMPONENT, "fuel-injector")
            .with(OverhaulLayout.UNIT, 1L)
            .with(OverhaulLayout.PLACE, 1L)
            .with(OverhaulLayout.DONE_ON, LocalDate.parse(day))
            .with(OverhaulLayout.REASON, Reason.PLANNED);
    pressure.ifPresent(bar -> cells.with(OverhaulLayout.OPENING_PRESSURE, bar));
    arrives(cells);
  }

  private void finding(String overhaul, FoundWord found, Action action) {
    arrives(
        Cells.of(RecordKind.FINDINGS)
            .with(FindingLayout.VESSEL, VESSEL)
            .with(FindingLayout.OVERHAUL, overhaul)
            .with(FindingLayout.PART, "nrv-spring")
            .with(FindingLayout.MODE_NO, 1L)
            .with(FindingLayout.OPENED, Statement.YES)
            .with(FindingLayout.FOUND, found)
            .with(FindingLayout.ACTION, action));
  }

  private void arrives(Cells.Builder cells) {
    FileDigest digest = FileDigest.of("export".getBytes(StandardCharsets.UTF_8));
    rows.add(
        new ArrivedRow(
            1, new SourcedRow(cells.build(), new Origin("export", digest, rows.size() + 1L))));
  }

  private TableRow row(String part) {
    List<TableRow> ofPart =
        cards().stream().filter(row -> row.need(SharedColumns.PART).equals(part)).toList();
    assertFalse(ofPart.isEmpty(), () -> "no " + part + ": " + cards());
    return ofPart.get(0);
  }

  private List<TableRow> cards() {
    CurrentRecords records = CurrentRecords.of(VESSEL, rows);
    var history =
        History.rebuild(
            records.forHistory(), TestCatalogue.CATALOGUE, RunningHours.ofHours(24), MONTH.end());
    return new VesselTables(MONTH, COMMITTED)
        .add(
            new VesselAccount(
                records,
                history.value(),
                List.of(),
                new BatchTimes(Map.of(1L, COMMITTED), COMMITTED)))
        .rows()
        .getOrDefault(JobCards.SPEC, List.of());
  }
}
