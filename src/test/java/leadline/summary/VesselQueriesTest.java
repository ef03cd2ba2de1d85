package leadline.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
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
import leadline.history.ShipQuestions;
import leadline.history.VesselHistory;
import leadline.origin.BatchTimes;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How questions open, last and close as exports arrive. */
class VesselQueriesTest {

  private static final String VESSEL = "hesper-lark";
  private static final ReportMonth MONTH = ReportMonth.parse("2024-02");
  private static final Map<Long, Instant> COMMITTED =
      Map.of(
          1L, Instant.parse("2024-03-01T06:00:00Z"),
          2L, Instant.parse("2024-04-01T06:00:00Z"),
          3L, Instant.parse("2024-05-01T18:00:00Z"));

  private final List<ArrivedRow> rows = new ArrayList<>();

  /** An engine of one cylinder, read at the beginning and the end of 2024's first two months. */
  @BeforeEach
  void anEngineAndAnOverhaul() {
    arrives(
        1,
        Cells.of(RecordKind.MACHINES)
            .with(MachineLayout.VESSEL, VESSEL)
            .with(MachineLayout.MACHINE, "ME")
            .with(MachineLayout.KIND, "main-engine")
            .with(MachineLayout.MODEL, "QX-60")
            .with(MachineLayout.CYLINDERS, 1L));
    reading(1, "2023-12-31", 0);
    reading(1, "2024-02-29", 600);
    arrives(
        1,
        Cells.of(RecordKind.OVERHAULS)
            .with(OverhaulLayout.VESSEL, VESSEL)
            .with(OverhaulLayout.OVERHAUL, "O1")
            .with(OverhaulLayout.MACHINE, "ME")
            .with(OverhaulLayout.COMPONENT, "fuel-injector")
            .with(OverhaulLayout.UNIT, 1L)
            .with(OverhaulLayout.DONE_ON, LocalDate.parse("2024-02-10"))
            .with(OverhaulLayout.REASON, Reason.PLANNED));
  }

  @Test
  void aQuestionIsAskedWithItsEvidenceAndWhatSettlesIt() {
    finding(1, FoundWord.BROKEN, Action.NONE);
    TableRow row = only(knownBy(1));
    // printf 'hesper-lark|broken-and-kept|O1 nrv-spring' | sha256sum
    assertEquals("Q-526d16c8a7", row.need(VesselQueries.QUERY));
    assertEquals("ME", row.need(VesselQueries.MACHINE));
    assertEquals("fuel-injector", row.need(VesselQueries.COMPONENT));
    assertEquals("nrv-spring", row.need(VesselQueries.PART));
    assertEquals(
        "Was part nrv-spring left in, or was a new one fitted?", row.need(VesselQueries.QUESTION));
    assertEquals(
        "Part nrv-spring was found broken, and no renewal is on record. (export 1 line 5)",
        row.need(VesselQueries.EVIDENCE));
    assertTrue(row.need(VesselQueries.SETTLED_BY).startsWith("Send the finding again"));
  }

  @Test
  void aQuestionGrowsOlderFromTheBatchThatRaisedIt() {
    finding(1, FoundWord.BROKEN, Action.NONE);
    reading(2, "2024-03-31", 900);
    reading(3, "2024-04-30", 1200);
    assertEquals(COMMITTED.get(1L), only(knownBy(3)).need(VesselQueries.FIRST_ASKED));
    assertEquals(0, only(knownBy(1)).need(VesselQueries.AGE_DAYS));
    assertEquals(31, only(knownBy(2)).need(VesselQueries.AGE_DAYS));
    assertEquals(61, only(knownBy(3)).need(VesselQueries.AGE_DAYS)); // and twelve hours
  }

  @Test
  void aLaterExportThatAnswersClosesTheQuestionAndThePastRepeats() {
    finding(1, FoundWord.BROKEN, Action.NONE);
    List<TableRow> before = knownBy(1);
    finding(2, FoundWord.BROKEN, Action.RENEWED);
    assertEquals(List.of(), knownBy(2));
    assertEquals(before, knownBy(1));
  }

  @Test
  void aCorrectionThatAnswersNothingKeepsTheQuestionAndAsksItAnew() {
    finding(1, FoundWord.BROKEN, Action.NONE);
    finding(2, FoundWord.CRACKED, Action.NONE);
    TableRow before = only(knownBy(1));
    TableRow after = only(knownBy(2));
    assertEquals(before.need(VesselQueries.QUERY), after.need(VesselQueries.QUERY));
    assertEquals(COMMITTED.get(2L), after.need(VesselQueries.FIRST_ASKED));
  }

  @Test
  void theSameRowSentAgainChangesNothing() {
    finding(1, FoundWord.BROKEN, Action.NONE);
    finding(2, FoundWord.BROKEN, Action.NONE);
    assertEquals(COMMITTED.get(1L), only(knownBy(2)).need(VesselQueries.FIRST_ASKED));
    assertEquals(
        only(knownBy(1)).need(VesselQueries.EVIDENCE),
        only(knownBy(2)).need(VesselQueries.EVIDENCE));
  }

  @Test
  void anAnswerTakenBackOpensTheQuestionAgainUnderItsName() {
    finding(1, FoundWord.BROKEN, Action.NONE);
    finding(2, FoundWord.BROKEN, Action.RENEWED);
    finding(3, FoundWord.BROKEN, Action.CLEANED);
    TableRow again = only(knownBy(3));
    assertEquals(only(knownBy(1)).need(VesselQueries.QUERY), again.need(VesselQueries.QUERY));
    assertEquals(COMMITTED.get(3L), again.need(VesselQueries.FIRST_ASKED));
  }

  @Test
  void twoRowsOfOneRecordInQuestionAreOneQuestion() {
    stray(1, 1);
    stray(2, 2);
    TableRow row = only(knownBy(2));
    assertEquals("finding-without-overhaul", row.need(VesselQueries.KIND));
    assertEquals(COMMITTED.get(1L), row.need(VesselQueries.FIRST_ASKED));
    assertEquals(
        "The finding of the nrv-spring belongs to overhaul O9, which was not received."
            + " (export 1 line 5; export 2 line 6)",
        row.need(VesselQueries.EVIDENCE));
  }

  @Test
  void anEndedSilenceIsNoQuestionAnyMore() {
    // By three readings only; 92 days after 29 February are over on 31 May.
    reading(2, "2024-03-10", 700);
    ReportMonth june = ReportMonth.parse("2024-06");
    Map<Long, Instant> committed =
        Map.of(
            1L, Instant.parse("2024-03-01T06:00:00Z"),
            2L, Instant.parse("2024-07-01T06:00:00Z"),
            3L, Instant.parse("2024-07-02T06:00:00Z"));
    TableRow silent = only(rows(june, committed, 2, rows));
    assertEquals("vessel-silent", silent.need(VesselQueries.KIND));
    // The reading of 10 March came late, on 1 July: before, nobody knew when the silence began.
    assertEquals(committed.get(2L), silent.need(VesselQueries.FIRST_ASKED));
    reading(3, "2024-06-30", 1800);
    assertEquals(List.of(), rows(june, committed, 3, rows));
    assertEquals(List.of(silent), rows(june, committed, 2, rows));
  }

  @Test
  void theOrderOfTheRowsChangesNothing() {
    finding(1, FoundWord.BROKEN, Action.NONE);
    stray(1, 1);
    stray(2, 2);
    reading(2, "2024-02-15", 9999);
    List<TableRow> expected = knownBy(2);
    assertEquals(3, expected.size());
    for (int drawing = 0; drawing < 20; drawing++) {
      List<ArrivedRow> shuffled = new ArrayList<>(rows);
      Collections.shuffle(shuffled, new Random(drawing));
      assertEquals(expected, rows(MONTH, COMMITTED, 2, shuffled));
    }
  }

  private void finding(long batch, FoundWord found, Action action) {
    arrives(
        batch,
        Cells.of(RecordKind.FINDINGS)
            .with(FindingLayout.VESSEL, VESSEL)
            .with(FindingLayout.OVERHAUL, "O1")
            .with(FindingLayout.PART, "nrv-spring")
            .with(FindingLayout.OPENED, Statement.YES)
            .with(FindingLayout.FOUND, found)
            .with(FindingLayout.ACTION, action));
  }

  private void stray(long batch, long mode) {
    arrives(
        batch,
        Cells.of(RecordKind.FINDINGS)
            .with(FindingLayout.VESSEL, VESSEL)
            .with(FindingLayout.OVERHAUL, "O9")
            .with(FindingLayout.PART, "nrv-spring")
            .with(FindingLayout.MODE_NO, mode));
  }

  private void reading(long batch, String day, long hours) {
    arrives(
        batch,
        Cells.of(RecordKind.HOURS)
            .with(HoursLayout.VESSEL, VESSEL)
            .with(HoursLayout.MACHINE, "ME")
            .with(HoursLayout.READ_AT, Days.endOf(LocalDate.parse(day)))
            .with(HoursLayout.HOURS, RunningHours.ofHours(hours))
            .with(HoursLayout.KIND, ReadingKind.COUNTER));
  }

  /** The row stands in the batch's export, on the line after all rows before. */
  private void arrives(long batch, Cells.Builder cells) {
    String file = "export " + batch;
    FileDigest digest = FileDigest.of(file.getBytes(StandardCharsets.UTF_8));
    rows.add(
        new ArrivedRow(
            batch, new SourcedRow(cells.build(), new Origin(file, digest, rows.size() + 1L))));
  }

  private static TableRow only(List<TableRow> rows) {
    assertEquals(1, rows.size(), rows::toString);
    return rows.get(0);
  }

  private List<TableRow> knownBy(long batch) {
    return rows(MONTH, COMMITTED, batch, rows);
  }

  private static List<TableRow> rows(
      ReportMonth month, Map<Long, Instant> committed, long batch, List<ArrivedRow> arrived) {
    BatchTimes known =
        new BatchTimes(
            committed.entrySet().stream()
                .filter(each -> each.getKey() <= batch)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
            committed.getOrDefault(batch, Instant.EPOCH));
    CurrentRecords records =
        CurrentRecords.of(VESSEL, arrived.stream().filter(row -> row.batch() <= batch).toList());
    Checked<VesselHistory, Problem> history =
        History.rebuild(
            records.forHistory(), TestCatalogue.CATALOGUE, RunningHours.ofHours(24), month.end());
    List<Problem> problems =
        ShipQuestions.about(records, history, TestCatalogue.CATALOGUE, month.end(), known.last());
    return new VesselTables(month, known.last())
        .add(new VesselAccount(records, history.value(), problems, known))
        .rows()
        .getOrDefault(VesselQueries.SPEC, List.of());
  }
}
