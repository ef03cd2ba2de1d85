package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.fleet.ReturnLayout;
import leadline.fleet.StoredRow;
import leadline.history.ArrivedRow;
import leadline.history.Census;
import leadline.history.CurrentRecords;
import leadline.history.History;
import leadline.history.ShipQuestions;
import leadline.history.VesselHistory;
import leadline.intake.ExportFile;
import leadline.intake.ExportReader;
import leadline.intake.RefusedRow;
import leadline.intake.RowSink;
import leadline.origin.BatchTimes;
import leadline.origin.FileDigest;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.publish.Issue;
import leadline.publish.PublishedTable;
import leadline.publish.ReturnSheets;
import leadline.publish.RunManifest;
import leadline.publish.Standing;
import leadline.quantity.RunningHours;
import leadline.summary.DueList;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.VesselAccount;
import leadline.summary.VesselColumns;
import leadline.summary.VesselQueries;
import leadline.summary.VesselTables;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet published, filled in, taken in and counted: what the golden fleet's ship says of it. */
class ReturnRoundTripTest {

  private static final String VESSEL = "marrowgull";

  /** MG-15: main spring found broken, and nothing done. */
  private static final String BROKEN_AND_KEPT = "Q-c899745e93";

  /** A counter that fell. */
  private static final String FALLEN_COUNTER = "Q-a71e99f531";

  private static final Instant COMMITTED = GoldenFleet.READ_ON;

  private final GoldenFleet fleet = GoldenFleet.read(3);

  @TempDir Path folder;

  private Map<TableSpec, List<TableRow>> tables = Map.of();

  /** Row and column of the sheet to what the ship writes there. */
  private final Map<String, Map<Column<?>, String>> filled = new LinkedHashMap<>();

  @BeforeEach
  void publish() throws IOException {
    tables = tables(rows());
    Issue issue =
        new Issue(
            new RunManifest(
                "run",
                GoldenFleet.MONTH,
                COMMITTED,
                "0",
                "0",
                List.of(),
                Map.of(),
                Map.of(),
                Map.of()),
            Standing.CURRENT,
            List.of(
                new PublishedTable(DueList.SPEC, rows(DueList.SPEC)),
                new PublishedTable(VesselQueries.SPEC, rows(VesselQueries.SPEC))),
            List.of("Keep clear of the spray."));
    new ReturnSheets(GoldenFleet.catalogue()).write(issue, folder);
  }

  @Test
  void theSheetOfEachVesselIsThereInBothFormats() throws IOException {
    assertTrue(Files.exists(sheet(".csv")));
    try (Stream<Path> files = Files.list(folder.resolve("returns"))) {
      assertEquals(
          List.of("csv", "xlsx"),
          files
              .map(file -> String.valueOf(file.getFileName()))
              .filter(name -> name.startsWith("returns_marrowgull_2024-12."))
              .map(name -> name.substring(name.lastIndexOf('.') + 1))
              .sorted()
              .toList());
    }
  }

  @Test
  void aSheetSentBackUnfilledChangesNothing() throws IOException {
    List<Cells> csv = read(sheet(".csv"), 4).stream().map(row -> row.row().cells()).toList();
    assertEquals(csv, read(sheet(".xlsx"), 4).stream().map(row -> row.row().cells()).toList());
    assertFalse(csv.isEmpty());
    assertSameTablesWith(read(sheet(".csv"), 4));
  }

  @Test
  void whatTheShipFillsInIsCountedFromEitherFormat() throws IOException {
    String due = due("@1/1");
    fillIn(BROKEN_AND_KEPT, ReturnLayout.ACTION, "renewed", ReturnLayout.ANSWER, "corrected");
    fillIn(FALLEN_COUNTER, ReturnLayout.ANSWER, "as-written", ReturnLayout.REMARK, "new counter");
    fillIn(
        due,
        ReturnLayout.DONE_ON,
        "2024-12-20",
        ReturnLayout.MACHINE_HOURS,
        "113400",
        ReturnLayout.REASON,
        "planned");
    fillIn(due + " nozzle", ReturnLayout.OPENED, "yes", ReturnLayout.FOUND, "worn");
    fillIn(due + " nrv-spring", ReturnLayout.OPENED, "no");

    List<ArrivedRow> csv = read(filledText(), 4);
    List<ArrivedRow> workbook = read(filledWorkbook(), 4);
    assertEquals(
        csv.stream().map(row -> row.row().cells()).toList(),
        workbook.stream().map(row -> row.row().cells()).toList());

    List<ArrivedRow> rows = new ArrayList<>(rows());
    rows.addAll(workbook);
    Map<TableSpec, List<TableRow>> then = tables(rows);
    List<String> asked = queries(then);
    List<String> askedBefore = queries(tables);
    assertTrue(askedBefore.containsAll(List.of(BROKEN_AND_KEPT, FALLEN_COUNTER)));
    assertFalse(asked.contains(BROKEN_AND_KEPT));
    assertFalse(asked.contains(FALLEN_COUNTER));
    TableRow position = position(then, "@1/1");
    assertEquals(Optional.of(due), position.find(DueList.OVERHAUL));
    assertEquals("2024-12-20", position.need(DueList.SINCE_ON));
    assertEquals("not-due", position.need(DueList.STANDING));

    CurrentRecords records = CurrentRecords.of(VESSEL, rows);
    assertEquals(
        List.of("nozzle", "nrv-spring"),
        records.forHistory().findings().stream()
            .filter(finding -> finding.overhaul().overhaul().equals(due))
            .map(finding -> finding.part())
            .sorted()
            .toList());
    Census before = CurrentRecords.of(VESSEL, rows()).census();
    assertEquals(before.of(RecordKind.OVERHAULS), records.census().of(RecordKind.OVERHAULS));

    List<ArrivedRow> resent = new ArrayList<>(rows);
    resent.addAll(read(filledText(), 5));
    assertEquals(then, tables(resent));
  }

  @Test
  void aQuestionAnsweredIsAskedAgainWhenItsRecordIsWrittenAnew() throws IOException {
    fillIn(BROKEN_AND_KEPT, ReturnLayout.ANSWER, "as-written", ReturnLayout.REMARK, "no spare");
    List<ArrivedRow> rows = new ArrayList<>(rows());
    rows.addAll(read(filledText(), 4));
    assertFalse(queries(tables(rows)).contains(BROKEN_AND_KEPT));

    Path anew = folder.resolve("findings_anew.csv");
    Files.writeString(
        anew,
        """
        vessel,overhaul,part,opened,found,action,remark
        marrowgull,MG-15,main-spring,yes,broken,none,seen twice
        """);
    rows.addAll(read(anew, RecordKind.FINDINGS, 5));
    assertTrue(queries(tables(rows)).contains(BROKEN_AND_KEPT));
  }

  private void assertSameTablesWith(List<ArrivedRow> returned) {
    List<ArrivedRow> rows = new ArrayList<>(rows());
    rows.addAll(returned);
    Map<TableSpec, List<TableRow>> then = tables(rows);
    assertEquals(tables.get(DueList.SPEC), then.get(DueList.SPEC));
    assertEquals(tables.get(VesselQueries.SPEC), then.get(VesselQueries.SPEC));
  }

  private void fillIn(String row, Object... columnsAndTexts) {
    Map<Column<?>, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < columnsAndTexts.length; i += 2) {
      cells.put((Column<?>) columnsAndTexts[i], (String) columnsAndTexts[i + 1]);
    }
    cells.put(ReturnLayout.ANSWERED_ON, "2024-12-22");
    filled.put(row, cells);
  }

  /** The texts of the sheet, line by line, with what the ship fills in. */
  private List<List<String>> texts() throws IOException {
    List<List<String>> lines = new ArrayList<>();
    try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(sheet(".csv"))) {
      csv.forEach(line -> lines.add(new ArrayList<>(line.getFields())));
    }
    for (List<String> line : lines) {
      filled
          .getOrDefault(line.get(ReturnLayout.SHEET_ROW.index()), Map.of())
          .forEach((column, text) -> line.set(column.index(), text));
    }
    return lines;
  }

  private Path filledText() throws IOException {
    Path file = folder.resolve("returns_marrowgull.csv");
    try (CsvWriter csv = CsvWriter.builder().build(file)) {
      for (List<String> line : texts()) {
        csv.writeRecord(line);
      }
    }
    return file;
  }

  /** As a spreadsheet program saves it: days as dates, hours as numbers. */
  private Path filledWorkbook() throws IOException {
    Path file = folder.resolve("returns_marrowgull.xlsx");
    try (OutputStream bytes = Files.newOutputStream(file);
        Workbook workbook = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = workbook.newWorksheet("returns");
      List<List<String>> lines = texts();
      for (int row = 0; row < lines.size(); row++) {
        for (int column = 0; column < lines.get(row).size(); column++) {
          put(sheet, row, column, lines.get(row).get(column));
        }
      }
    }
    return file;
  }

  private static void put(Worksheet sheet, int row, int column, String text) {
    if (text.matches("\\d{4}-\\d{2}-\\d{2}")) {
      sheet.value(row, column, LocalDate.parse(text));
      sheet.style(row, column).format("dd.mm.yyyy").set();
    } else if (text.matches("\\d+")) {
      sheet.value(row, column, Long.parseLong(text));
    } else if (text.startsWith("'@")) {
      sheet.value(row, column, text.substring(1));
    } else if (!text.isEmpty()) {
      sheet.value(row, column, text);
    }
  }

  private List<ArrivedRow> rows() {
    return fleet.rowsByVessel.getOrDefault(VESSEL, List.of());
  }

  private Path sheet(String ending) {
    return folder.resolve("returns/returns_marrowgull_2024-12" + ending);
  }

  private List<ArrivedRow> read(Path file, long batch) throws IOException {
    return read(file, RecordKind.RETURNS, batch);
  }

  private List<ArrivedRow> read(Path file, RecordKind kind, long batch) throws IOException {
    List<ArrivedRow> rows = new ArrayList<>();
    RowSink sink =
        new RowSink() {
          @Override
          public void stored(StoredRow row) {
            rows.add(new ArrivedRow(batch, row.row()));
          }

          @Override
          public void refused(RefusedRow row) {
            throw new AssertionError(row.sentences().toString());
          }
        };
    ExportFile export =
        new ExportFile(kind, folder.relativize(file).toString(), FileDigest.of(file));
    ExportReader.read(folder, export, GoldenFleet.catalogue(), GoldenFleet.READ_ON, sink);
    return rows;
  }

  /** The vessel's tables as they would be published. */
  private static Map<TableSpec, List<TableRow>> tables(List<ArrivedRow> rows) {
    CurrentRecords records = CurrentRecords.of(VESSEL, rows);
    Checked<VesselHistory, Problem> history =
        History.rebuild(
            records.forHistory(),
            GoldenFleet.catalogue(),
            RunningHours.ofHours(24),
            GoldenFleet.MONTH.end());
    Map<Long, Instant> batches = new TreeMap<>();
    for (long batch = 1; batch <= 5; batch++) {
      batches.put(batch, COMMITTED.plusSeconds(batch));
    }
    BatchTimes known = new BatchTimes(batches, COMMITTED.plusSeconds(5));
    List<Problem> questions =
        ShipQuestions.about(
            records, history, GoldenFleet.catalogue(), GoldenFleet.MONTH.end(), known.last());
    return new VesselTables(GoldenFleet.MONTH, known.last())
        .add(new VesselAccount(records, history.value(), questions, known))
        .rows();
  }

  private List<TableRow> rows(TableSpec spec) {
    return tables.getOrDefault(spec, List.of());
  }

  private static List<String> queries(Map<TableSpec, List<TableRow>> tables) {
    return tables.getOrDefault(VesselQueries.SPEC, List.of()).stream()
        .map(row -> row.need(VesselQueries.QUERY))
        .toList();
  }

  private static TableRow position(Map<TableSpec, List<TableRow>> tables, String position) {
    return tables.getOrDefault(DueList.SPEC, List.of()).stream()
        .filter(row -> row.need(VesselColumns.POSITION).equals(position))
        .filter(row -> row.need(VesselColumns.MACHINE).equals("ME"))
        .findFirst()
        .orElseThrow();
  }

  /** The sheet's row of the injector's overhaul that falls due there. */
  private String due(String position) throws IOException {
    return texts().stream()
        .filter(
            line -> line.get(ReturnLayout.SUBJECT.index()).contains("fuel-injector " + position))
        .filter(line -> line.get(ReturnLayout.PART.index()).isEmpty())
        .map(line -> line.get(ReturnLayout.SHEET_ROW.index()))
        .findFirst()
        .orElseThrow();
  }
}
