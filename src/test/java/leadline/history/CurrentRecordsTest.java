package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.HoursLayout;
import leadline.fleet.MovementLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.fleet.Status;
import leadline.fleet.StockLayout;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/** Which of a record's rows stands: the project's own rules, each row written by hand. */
class CurrentRecordsTest {

  private static final Instant MONDAY = Instant.parse("2024-03-04T12:00:00Z");
  private static final Instant TUESDAY = Instant.parse("2024-03-05T12:00:00Z");

  private final List<ArrivedRow> rows = new ArrayList<>();

  @Test
  void theSameCellsAgainAreADuplicateWhoseOriginIsTheFirstArrival() {
    arrives(2, 7, overhaul("O1").build());
    arrives(1, 9, overhaul("O1").build());
    arrives(1, 3, overhaul("O1").build());
    assertEquals(new Census.Count(1, 2, 0, 0), census(RecordKind.OVERHAULS));
    assertEquals(3, decided().rows().get(0).origin().line());
  }

  @Test
  void aLaterRevisedAtStandsEvenIfItArrivedFirst() {
    arrives(1, 1, overhaul("O1").with(OverhaulLayout.REVISED_AT, TUESDAY).build());
    arrives(2, 1, overhaul("O1").with(OverhaulLayout.REVISED_AT, MONDAY).build());
    arrives(3, 1, overhaul("O1").build());
    assertEquals(new Census.Count(1, 0, 2, 0), census(RecordKind.OVERHAULS));
    assertEquals(TUESDAY, standing(0).need(OverhaulLayout.REVISED_AT));
  }

  @Test
  void withoutRevisedAtTheLaterBatchThenFileThenLineStands() {
    arrives(1, 5, reading(100));
    arrives(2, 1, reading(200));
    arrives(2, 2, reading(300));
    assertEquals(new Census.Count(1, 0, 2, 0), census(RecordKind.HOURS));
    assertEquals(RunningHours.ofHours(300), standing(0).need(HoursLayout.HOURS));
  }

  @Test
  void anEarlierVersionSentAgainDoesNotStandAgain() {
    arrives(1, 1, reading(100));
    arrives(2, 1, reading(200));
    arrives(3, 1, reading(100)); // an old export, sent again
    assertEquals(new Census.Count(1, 1, 1, 0), census(RecordKind.HOURS));
    assertEquals(RunningHours.ofHours(200), standing(0).need(HoursLayout.HOURS));
  }

  @Test
  void aCancelledVersionWithdrawsTheRecordAndAStaleCopyDoesNotReviveIt() {
    arrives(1, 1, overhaul("O1").build());
    arrives(
        2,
        1,
        overhaul("O1")
            .with(OverhaulLayout.STATUS, Status.CANCELLED)
            .with(OverhaulLayout.REVISED_AT, MONDAY)
            .build());
    arrives(3, 1, overhaul("O1").build());
    assertEquals(new Census.Count(0, 1, 1, 1), census(RecordKind.OVERHAULS));
    assertEquals(List.of(), decided().forHistory().overhauls());
  }

  @Test
  void aLaterRevisionRevivesACancelledRecord() {
    arrives(
        1,
        1,
        overhaul("O1")
            .with(OverhaulLayout.STATUS, Status.CANCELLED)
            .with(OverhaulLayout.REVISED_AT, MONDAY)
            .build());
    arrives(2, 1, overhaul("O1").with(OverhaulLayout.REVISED_AT, TUESDAY).build());
    assertEquals(new Census.Count(1, 0, 1, 0), census(RecordKind.OVERHAULS));
  }

  @Test
  void aCancelledOverhaulTakesItsFindingsOutOfTheHistoryThoughTheirRowsStayCurrent() {
    arrives(1, 1, overhaul("O1").with(OverhaulLayout.STATUS, Status.CANCELLED).build());
    arrives(1, 2, overhaul("O2").build());
    arrives(1, 3, finding("O1").build());
    arrives(1, 4, finding("O2").build());
    arrives(1, 5, finding("O3").build()); // of an overhaul never received: still to be asked about
    assertEquals(new Census.Count(3, 0, 0, 0), census(RecordKind.FINDINGS));
    assertEquals(
        List.of("O2", "O3"),
        decided().forHistory().findings().stream()
            .map(finding -> finding.overhaul().overhaul())
            .toList());
  }

  @Test
  void aCancelledFindingIsWithdrawnAlone() {
    arrives(1, 1, overhaul("O1").build());
    arrives(1, 2, finding("O1").build());
    arrives(
        2,
        1,
        finding("O1")
            .with(FindingLayout.STATUS, Status.CANCELLED)
            .with(FindingLayout.REVISED_AT, MONDAY)
            .build());
    assertEquals(new Census.Count(0, 0, 1, 1), census(RecordKind.FINDINGS));
    assertEquals(1, decided().forHistory().overhauls().size());
  }

  @Test
  void stockAndMovementsAreDecidedToo() {
    arrives(1, 1, stock(4));
    arrives(2, 1, stock(5));
    arrives(1, 2, movement());
    arrives(2, 2, movement());
    assertEquals(new Census.Count(1, 0, 1, 0), census(RecordKind.STOCK));
    assertEquals(new Census.Count(1, 1, 0, 0), census(RecordKind.MOVEMENTS));
    assertEquals(5, decided().rows(RecordKind.STOCK).get(0).cells().need(StockLayout.ON_HAND));
  }

  @Test
  void theOrderInWhichRowsAreReadChangesNothing() {
    arrives(1, 1, overhaul("O1").build());
    arrives(1, 2, overhaul("O2").build());
    arrives(2, 1, overhaul("O1").with(OverhaulLayout.REVISED_AT, MONDAY).build());
    arrives(2, 2, overhaul("O2").build());
    CurrentRecords forwards = decided();
    Collections.reverse(rows);
    assertEquals(forwards, decided());
  }

  @Test
  void aCensusOfSeveralVesselsIsTheSumOfTheirs() {
    arrives(1, 1, reading(100));
    arrives(2, 1, reading(200));
    Census one = decided().census();
    Census two = one.plus(one).plus(Census.EMPTY);
    assertEquals(new Census.Count(2, 0, 2, 0), two.of(RecordKind.HOURS));
    assertEquals(4, two.of(RecordKind.HOURS).stored());
  }

  @Test
  void rowsOfAnotherVesselAreRefused() {
    arrives(1, 1, reading(100));
    assertThrows(IllegalArgumentException.class, () -> CurrentRecords.of("dun-plover", rows));
  }

  private void arrives(long batch, int line, Cells cells) {
    FileDigest file = FileDigest.of(("file of batch " + batch).getBytes(StandardCharsets.UTF_8));
    rows.add(new ArrivedRow(batch, new SourcedRow(cells, new Origin("x.csv", file, line))));
  }

  private CurrentRecords decided() {
    return CurrentRecords.of(Ship.VESSEL, rows);
  }

  private Census.Count census(RecordKind kind) {
    Census.Count count = decided().census().of(kind);
    assertEquals(
        rows.stream().filter(row -> row.row().cells().kind() == kind).count(), count.stored());
    return count;
  }

  private Cells standing(int index) {
    return decided().rows().get(index).cells();
  }

  private static Cells.Builder overhaul(String overhaul) {
    return Cells.of(RecordKind.OVERHAULS)
        .with(OverhaulLayout.VESSEL, Ship.VESSEL)
        .with(OverhaulLayout.OVERHAUL, overhaul)
        .with(OverhaulLayout.MACHINE, "ME")
        .with(OverhaulLayout.COMPONENT, "fuel-injector")
        .with(OverhaulLayout.DONE_ON, LocalDate.of(2024, 3, 1))
        .with(OverhaulLayout.REASON, Reason.PLANNED);
  }

  private static Cells.Builder finding(String overhaul) {
    return Cells.of(RecordKind.FINDINGS)
        .with(FindingLayout.VESSEL, Ship.VESSEL)
        .with(FindingLayout.OVERHAUL, overhaul)
        .with(FindingLayout.PART, "nozzle");
  }

  private static Cells reading(long hours) {
    return Cells.of(RecordKind.HOURS)
        .with(HoursLayout.VESSEL, Ship.VESSEL)
        .with(HoursLayout.MACHINE, "ME")
        .with(HoursLayout.READ_AT, MONDAY)
        .with(HoursLayout.HOURS, RunningHours.ofHours(hours))
        .with(HoursLayout.KIND, ReadingKind.COUNTER)
        .build();
  }

  private static Cells stock(long onHand) {
    return Cells.of(RecordKind.STOCK)
        .with(StockLayout.VESSEL, Ship.VESSEL)
        .with(StockLayout.PART, "nozzle")
        .with(StockLayout.COUNTED_ON, LocalDate.of(2024, 3, 1))
        .with(StockLayout.ON_HAND, onHand)
        .build();
  }

  private static Cells movement() {
    return Cells.of(RecordKind.MOVEMENTS)
        .with(MovementLayout.VESSEL, Ship.VESSEL)
        .with(MovementLayout.MOVEMENT, "M1")
        .with(MovementLayout.PART, "nozzle")
        .with(MovementLayout.MOVED_ON, LocalDate.of(2024, 3, 1))
        .with(MovementLayout.QUANTITY, -1L)
        .build();
  }
}
