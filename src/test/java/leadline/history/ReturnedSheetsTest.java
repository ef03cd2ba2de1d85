package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import leadline.fleet.Action;
import leadline.fleet.Answer;
import leadline.fleet.Cells;
import leadline.fleet.Finding;
import leadline.fleet.FindingLayout;
import leadline.fleet.FoundWord;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.ReturnLayout;
import leadline.fleet.ReturnedRow;
import leadline.fleet.SourcedRow;
import leadline.fleet.Statement;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/** What a return sheet makes of the records: the project's own rules, each row written by hand. */
class ReturnedSheetsTest {

  private static final Instant FRIDAY = Instant.parse("2024-03-01T12:00:00Z");
  private static final Instant MONDAY = Instant.parse("2024-03-04T12:00:00Z");
  private static final Instant TUESDAY = Instant.parse("2024-03-05T12:00:00Z");

  private final List<ArrivedRow> rows = new ArrayList<>();

  @Test
  void theCellsFilledInTakeThePlaceOfTheRecordsAndTheOthersStay() {
    arrives(1, finding("O1").with(FindingLayout.FOUND, FoundWord.WORN).build());
    arrives(2, aboutFinding("O1").with(ReturnLayout.OPENED, Statement.YES).build());
    Finding standing = findings().get(0);
    assertEquals(Optional.of(Statement.YES), standing.opened());
    assertEquals(Optional.of(FoundWord.WORN), standing.found());
    assertEquals("file of batch 2", standing.origin().file());
    assertEquals(new Census.Count(1, 0, 0, 0), census(RecordKind.FINDINGS));
    assertEquals(new Census.Count(1, 0, 0, 0), census(RecordKind.RETURNS));
  }

  @Test
  void anAnswerOfALaterDayThanTheRecordsRevisionStandsWhicheverCameFirst() {
    arrives(1, aboutOverhaul("O1").with(ReturnLayout.DONE_ON, day(9)).build());
    arrives(2, overhaul("O1").with(OverhaulLayout.REVISED_AT, FRIDAY).build());
    assertEquals(day(9), overhauls().get(0).removedOn());
  }

  @Test
  void aRecordRevisedAfterTheAnswerStandsWhicheverCameFirst() {
    arrives(1, overhaul("O1").with(OverhaulLayout.REVISED_AT, TUESDAY).build());
    arrives(2, aboutOverhaul("O1").with(ReturnLayout.DONE_ON, day(9)).build());
    assertEquals(day(1), overhauls().get(0).removedOn());
  }

  @Test
  void severalAnswersAboutOneRecordAreAppliedInTheOrderOfTheirDays() {
    arrives(1, overhaul("O1").build());
    arrives(
        2,
        about(ReturnedRow.QUESTION, "Q-2", "O1", TUESDAY)
            .with(ReturnLayout.UNIT, 2L)
            .with(ReturnLayout.REMOVED_SERIAL, "S2")
            .build());
    arrives(
        3,
        about(ReturnedRow.QUESTION, "Q-1", "O1", MONDAY)
            .with(ReturnLayout.UNIT, 1L)
            .with(ReturnLayout.FITTED_SERIAL, "S1")
            .build());
    Overhaul standing = overhauls().get(0);
    assertEquals(Optional.of(2), standing.unit());
    assertEquals(Optional.of("S2"), standing.removedSerial());
    assertEquals(Optional.of("S1"), standing.fittedSerial());
  }

  @Test
  void ofTheSheetsRowsOfOneNumberTheLaterOneAloneCounts() {
    arrives(1, overhaul("O1").build());
    arrives(2, aboutOverhaul("O1").with(ReturnLayout.REMOVED_SERIAL, "S1").build());
    arrives(
        3, about(ReturnedRow.QUESTION, "Q-1", "O1", TUESDAY).with(ReturnLayout.UNIT, 2L).build());
    assertEquals(Optional.empty(), overhauls().get(0).removedSerial());
    assertEquals(new Census.Count(1, 0, 1, 0), census(RecordKind.RETURNS));
  }

  @Test
  void aSheetSentAgainOrSentBackEmptyChangesNothing() {
    arrives(1, overhaul("O1").build());
    arrives(2, aboutOverhaul("O1").with(ReturnLayout.DONE_ON, day(9)).build());
    CurrentRecords before = decided();
    arrives(3, aboutOverhaul("O1").with(ReturnLayout.DONE_ON, day(9)).build());
    arrives(4, empty(ReturnedRow.QUESTION, "Q-1", "O1").build());
    arrives(4, empty(ReturnedRow.DUE_OVERHAUL, "D-1", "D-1").build());
    assertEquals(before.forHistory(), decided().forHistory());
  }

  @Test
  void aCancelledRecordIsWithdrawnAndCountedSo() {
    arrives(1, overhaul("O1").build());
    arrives(1, finding("O1").build());
    arrives(2, aboutOverhaul("O1").with(ReturnLayout.ANSWER, Answer.CANCELLED).build());
    assertEquals(List.of(), overhauls());
    assertEquals(List.of(), findings());
    assertEquals(new Census.Count(0, 0, 0, 1), census(RecordKind.OVERHAULS));
    assertEquals(new Census.Count(1, 0, 0, 0), census(RecordKind.FINDINGS));
  }

  @Test
  void anOverhaulThatFellDueBecomesARecordWithAFindingForEachPartFilledIn() {
    arrives(1, due(MONDAY).with(ReturnLayout.MACHINE_HOURS, RunningHours.ofHours(8000)).build());
    arrives(1, duePart("nozzle").with(ReturnLayout.OPENED, Statement.NO).build());
    arrives(
        1,
        duePart("main-spring")
            .with(ReturnLayout.OPENED, Statement.YES)
            .with(ReturnLayout.FOUND, FoundWord.BROKEN)
            .with(ReturnLayout.ACTION, Action.RENEWED)
            .build());
    arrives(
        1,
        empty(ReturnedRow.DUE_OVERHAUL, "D-1 foot", "D-1").with(ReturnLayout.PART, "foot").build());
    Overhaul made = overhauls().get(0);
    assertEquals("hesper-lark/D-1", made.id().toString());
    assertEquals(Ship.ENGINE, made.machine().machine());
    assertEquals("fuel-injector", made.component());
    assertEquals(Optional.of(2), made.place());
    assertEquals(Optional.of(RunningHours.ofHours(8000)), made.machineHours());
    assertEquals(Reason.PLANNED, made.reason());
    assertEquals(
        List.of("main-spring", "nozzle"), findings().stream().map(Finding::part).sorted().toList());
    assertEquals(Census.Count.NONE, census(RecordKind.OVERHAULS));
    assertEquals(new Census.Count(4, 0, 0, 0), census(RecordKind.RETURNS));
  }

  @Test
  void anOverhaulReturnedUnderTheShipsOwnNumberIsAVersionOfItsRecord() {
    arrives(1, overhaul("O1").with(OverhaulLayout.PLACE, 1L).build());
    arrives(2, due(MONDAY).with(ReturnLayout.OVERHAUL, "O1").build());
    assertEquals(1, overhauls().size());
    assertEquals(day(7), overhauls().get(0).removedOn());
    assertEquals(Optional.of(1), overhauls().get(0).place()); // the sheet's own words do not count
  }

  @Test
  void whatWasReturnedInErrorIsTakenBackByCancellingTheSameRow() {
    arrives(1, due(MONDAY).build());
    arrives(2, due(TUESDAY).with(ReturnLayout.ANSWER, Answer.CANCELLED).build());
    assertEquals(List.of(), overhauls());
  }

  @Test
  void anAnswerAboutAnOverhaulThatIsNotThereMakesNone() {
    arrives(1, aboutOverhaul("O7").with(ReturnLayout.DONE_ON, day(9)).build());
    assertEquals(List.of(), overhauls());
  }

  @Test
  void theOrderOfTheRowsAndTheirBatchesChangesNothing() {
    List<Cells> cells =
        List.of(
            overhaul("O1").with(OverhaulLayout.REVISED_AT, FRIDAY).build(),
            overhaul("O1")
                .with(OverhaulLayout.REVISED_AT, MONDAY)
                .with(OverhaulLayout.UNIT, 2L)
                .build(),
            finding("O1").with(FindingLayout.REVISED_AT, FRIDAY).build(),
            about(ReturnedRow.QUESTION, "Q-1", "O1", FRIDAY.plusSeconds(1))
                .with(ReturnLayout.UNIT, 1L)
                .build(),
            about(ReturnedRow.QUESTION, "Q-2", "O1", TUESDAY).with(ReturnLayout.PLACE, 2L).build(),
            aboutFinding("O1").with(ReturnLayout.OPENED, Statement.YES).build(),
            due(MONDAY).build(),
            duePart("nozzle").with(ReturnLayout.OPENED, Statement.NO).build());
    cells.forEach(row -> arrives(1, row));
    List<Cells> expected = standing();
    for (int drawing = 0; drawing < 50; drawing++) {
      Random random = new Random(drawing);
      List<Cells> shuffled = new ArrayList<>(cells);
      Collections.shuffle(shuffled, random);
      rows.clear();
      shuffled.forEach(row -> arrives(1 + random.nextInt(4), row));
      assertEquals(expected, standing());
    }
  }

  @Test
  void answersThatTheRecordIsRightAreRememberedWithTheShipsWords() {
    arrives(1, overhaul("O1").build());
    arrives(
        3,
        aboutOverhaul("O1")
            .with(ReturnLayout.ANSWER, Answer.AS_WRITTEN)
            .with(ReturnLayout.REMARK, "as the sheet has it")
            .build());
    arrives(
        3, about(ReturnedRow.QUESTION, "Q-2", "O1", MONDAY).with(ReturnLayout.UNIT, 1L).build());
    assertEquals(
        List.of(new ShipAnswer("Q-1", MONDAY, Optional.of("as the sheet has it"), 3)),
        ShipAnswer.among(decided()));
    assertEquals(day(1), overhauls().get(0).removedOn());
  }

  private List<Cells> standing() {
    return decided().rows().stream()
        .map(SourcedRow::cells)
        .sorted((one, other) -> one.toString().compareTo(other.toString()))
        .toList();
  }

  private void arrives(long batch, Cells cells) {
    String file = "file of batch " + batch;
    FileDigest digest = FileDigest.of(file.getBytes(StandardCharsets.UTF_8));
    rows.add(
        new ArrivedRow(batch, new SourcedRow(cells, new Origin(file, digest, rows.size() + 1L))));
  }

  private CurrentRecords decided() {
    return CurrentRecords.of(Ship.VESSEL, rows);
  }

  private List<Overhaul> overhauls() {
    return decided().forHistory().overhauls();
  }

  private List<Finding> findings() {
    return decided().forHistory().findings();
  }

  private Census.Count census(RecordKind kind) {
    Census.Count count = decided().census().of(kind);
    assertEquals(
        rows.stream().filter(row -> row.row().cells().kind() == kind).count(), count.stored());
    return count;
  }

  private static LocalDate day(int day) {
    return LocalDate.of(2024, 2, day);
  }

  private static Cells.Builder overhaul(String overhaul) {
    return Cells.of(RecordKind.OVERHAULS)
        .with(OverhaulLayout.VESSEL, Ship.VESSEL)
        .with(OverhaulLayout.OVERHAUL, overhaul)
        .with(OverhaulLayout.MACHINE, Ship.ENGINE)
        .with(OverhaulLayout.COMPONENT, "fuel-injector")
        .with(OverhaulLayout.DONE_ON, day(1))
        .with(OverhaulLayout.REASON, Reason.PLANNED);
  }

  private static Cells.Builder finding(String overhaul) {
    return Cells.of(RecordKind.FINDINGS)
        .with(FindingLayout.VESSEL, Ship.VESSEL)
        .with(FindingLayout.OVERHAUL, overhaul)
        .with(FindingLayout.PART, "nozzle");
  }

  private static Cells.Builder aboutOverhaul(String overhaul) {
    return about(ReturnedRow.QUESTION, "Q-1", overhaul, MONDAY);
  }

  private static Cells.Builder aboutFinding(String overhaul) {
    return about(ReturnedRow.QUESTION, "Q-9", overhaul, MONDAY).with(ReturnLayout.PART, "nozzle");
  }

  private static Cells.Builder due(Instant answeredOn) {
    return about(ReturnedRow.DUE_OVERHAUL, "D-1", "D-1", answeredOn)
        .with(ReturnLayout.MACHINE, Ship.ENGINE)
        .with(ReturnLayout.COMPONENT, "fuel-injector")
        .with(ReturnLayout.UNIT, 1L)
        .with(ReturnLayout.PLACE, 2L)
        .with(ReturnLayout.DONE_ON, day(7))
        .with(ReturnLayout.REASON, Reason.PLANNED);
  }

  private static Cells.Builder duePart(String part) {
    return about(ReturnedRow.DUE_OVERHAUL, "D-1 " + part, "D-1", MONDAY)
        .with(ReturnLayout.PART, part);
  }

  private static Cells.Builder about(
      ReturnedRow about, String row, String overhaul, Instant answeredOn) {
    return empty(about, row, overhaul).with(ReturnLayout.ANSWERED_ON, answeredOn);
  }

  private static Cells.Builder empty(ReturnedRow about, String row, String overhaul) {
    return Cells.of(RecordKind.RETURNS)
        .with(ReturnLayout.VESSEL, Ship.VESSEL)
        .with(ReturnLayout.SHEET_ROW, row)
        .with(ReturnLayout.ABOUT, about)
        .with(ReturnLayout.OVERHAUL, overhaul);
  }
}
