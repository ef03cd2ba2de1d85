package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import leadline.fleet.Catalogue;
import leadline.fleet.Cells;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.Part;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.RecordKind;
import leadline.fleet.Renewal;
import leadline.fleet.ReturnLayout;
import leadline.fleet.ReturnedRow;
import leadline.fleet.StoredRow;
import leadline.intake.ExportFile;
import leadline.intake.ExportReader;
import leadline.intake.FileOutcome;
import leadline.intake.RefusedRow;
import leadline.intake.RowSink;
import leadline.origin.FileDigest;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written into a return sheet is what is read from it, in both of its formats. */
class ReturnSheetTest {

  private static final Instant READ_ON = Instant.parse("2025-02-01T06:00:00Z");
  private static final Catalogue CATALOGUE = catalogue();

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "O1",
        "=1+1",
        "=HYPERLINK(\"http://x\",\"y\")",
        "+31",
        "-17",
        "@SUM(A1)",
        "'quoted",
        "'=1",
        "''",
        "a,b;c",
        "two \"inches\"",
        "a\nb",
        "a\r\nb",
        "\tx",
        "<c t=\"str\">&amp;</c>",
        "001",
        "1E5",
        "2024-03-01",
        "TRUE",
        "Größe 😀 船"
      })
  void anyTextComesBackAsItWasFromEither(String text) throws IOException {
    String trimmed = text.strip();
    Cells row =
        Cells.of(RecordKind.RETURNS)
            .with(ReturnLayout.VESSEL, trimmed)
            .with(ReturnLayout.SHEET_ROW, "Q-1")
            .with(ReturnLayout.ABOUT, ReturnedRow.QUESTION)
            .with(ReturnLayout.QUESTION, trimmed)
            .with(ReturnLayout.OVERHAUL, trimmed)
            .with(ReturnLayout.PART, "nozzle")
            .build();
    ReturnSheet sheet = new ReturnSheet(trimmed, List.of(row));
    assertEquals(List.of(row), readBack(text(sheet)));
    assertEquals(List.of(row), readBack(workbook(sheet)));
  }

  @Test
  void aRowOfADueOverhaulComesBackWithItsNumbers() throws IOException {
    Cells row =
        Cells.of(RecordKind.RETURNS)
            .with(ReturnLayout.VESSEL, "plover")
            .with(ReturnLayout.SHEET_ROW, "D-1")
            .with(ReturnLayout.ABOUT, ReturnedRow.DUE_OVERHAUL)
            .with(ReturnLayout.OVERHAUL, "D-1")
            .with(ReturnLayout.MACHINE, "ME")
            .with(ReturnLayout.COMPONENT, "fuel-injector")
            .with(ReturnLayout.UNIT, 12L)
            .with(ReturnLayout.PLACE, 2L)
            .build();
    ReturnSheet sheet = new ReturnSheet("plover", List.of(row));
    assertEquals(List.of(row), readBack(text(sheet)));
    assertEquals(List.of(row), readBack(workbook(sheet)));
  }

  @Test
  void theWorkbookOffersTheWordsAndHoldsTheCautionsAndNoFormula() throws IOException {
    Cells row =
        Cells.of(RecordKind.RETURNS)
            .with(ReturnLayout.VESSEL, "=1+1")
            .with(ReturnLayout.SHEET_ROW, "Q-1")
            .with(ReturnLayout.ABOUT, ReturnedRow.QUESTION)
            .build();
    Path workbook = workbook(new ReturnSheet("=1+1", List.of(row)));
    StringBuilder content = new StringBuilder();
    try (ZipFile zip = new ZipFile(workbook.toFile())) {
      for (ZipEntry entry : (Iterable<ZipEntry>) zip.stream().<ZipEntry>map(one -> one)::iterator) {
        content.append(
            new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    assertTrue(content.indexOf("\"as-written,corrected,cancelled\"") > 0);
    assertTrue(content.indexOf("\"yes,no\"") > 0);
    assertTrue(content.indexOf("Keep clear of the spray.") > 0);
    assertTrue(content.indexOf("state=\"frozen\"") > 0);
    assertFalse(content.indexOf("<f>") > 0);
  }

  @Test
  void aQuestionAboutNoOverhaulHasNothingToFillInButTheAnswer() {
    Cells.Builder row =
        Cells.of(RecordKind.RETURNS)
            .with(ReturnLayout.VESSEL, "plover")
            .with(ReturnLayout.SHEET_ROW, "Q-1")
            .with(ReturnLayout.ABOUT, ReturnedRow.QUESTION);
    assertEquals(3, ReturnWorkbook.toFillIn(row.build()).size());
    row.with(ReturnLayout.OVERHAUL, "O1");
    assertEquals(13, ReturnWorkbook.toFillIn(row.build()).size());
    row.with(ReturnLayout.PART, "nozzle");
    assertEquals(8, ReturnWorkbook.toFillIn(row.build()).size());
  }

  private Path text(ReturnSheet sheet) throws IOException {
    Path file = folder.resolve("returns.csv");
    ReturnText.write(sheet, file);
    return file;
  }

  private Path workbook(ReturnSheet sheet) throws IOException {
    Path file = folder.resolve("returns.xlsx");
    ReturnWorkbook.write(sheet, List.of("Keep clear of the spray."), file);
    return file;
  }

  private static List<Cells> readBack(Path file) throws IOException {
    List<Cells> rows = new ArrayList<>();
    RowSink sink =
        new RowSink() {
          @Override
          public void stored(StoredRow row) {
            rows.add(row.cells());
          }

          @Override
          public void refused(RefusedRow row) {
            throw new AssertionError(row.sentences().toString());
          }
        };
    ExportFile export =
        new ExportFile(RecordKind.RETURNS, String.valueOf(file.getFileName()), FileDigest.of(file));
    FileOutcome outcome =
        ExportReader.read(file.resolveSibling(""), export, CATALOGUE, READ_ON, sink);
    assertTrue(outcome instanceof FileOutcome.FileTally, outcome.toString());
    return rows;
  }

  private static Catalogue catalogue() {
    Part nozzle =
        new Part(
            "nozzle",
            PartShape.FIT,
            FailureShows.ALWAYS,
            Set.of(),
            Set.of(),
            Set.of(),
            Renewal.ON_CONDITION,
            Clock.HOURS,
            "none");
    return new Catalogue(
        List.of(
            new Component(
                "fuel-injector",
                PositionsPer.PLACE,
                Set.of("main-engine"),
                RunningHours.ofHours(8000),
                List.of(nozzle))));
  }
}
