package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.ZipFile;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.Verdict;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook is read back cell by cell. */
class WorkbookFileTest {

  @TempDir Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void aWorkbook() throws IOException {
    WorkbookFile.write(SampleIssue.of("run-1", "2024-12", Standing.CURRENT), folder);
    file = folder.resolve("leadline-2024-12.xlsx");
  }

  private List<Row> rows(String sheet) throws IOException {
    try (InputStream in = Files.newInputStream(file);
        ReadableWorkbook workbook = new ReadableWorkbook(in)) {
      return workbook.findSheet(sheet).orElseThrow().read();
    }
  }

  private String part(String name) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile());
        InputStream in = zip.getInputStream(zip.getEntry(name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void everyCellIsThatOfTheTable() throws IOException {
    List<Row> rows = rows("sample_rates");
    List<TableRow> expected = SampleTable.rows();

    assertEquals(
        List.of(
            "component",
            "known_at (UTC)",
            "events",
            "rate_per_million_h (per million h)",
            "remark"),
        rows.get(0).stream().map(Cell::getText).toList());
    assertEquals(expected.size() + 1, rows.size());
    for (int row = 0; row < expected.size(); row++) {
      for (int column = 0; column < SampleTable.SPEC.columns().size(); column++) {
        assertCell(
            expected.get(row).find(SampleTable.SPEC.columns().get(column)),
            SampleTable.SPEC.columns().get(column),
            rows.get(row + 1)
                .getOptionalCell(column)
                .filter(cell -> cell.getType() != CellType.EMPTY));
      }
    }
  }

  private static void assertCell(Optional<?> value, TableColumn<?> column, Optional<Cell> found) {
    assertEquals(value.isPresent(), found.isPresent(), column::name);
    if (value.isEmpty()) {
      return;
    }
    Cell cell = found.orElseThrow();
    if (value.get() instanceof Double number) {
      assertEquals(CellType.NUMBER, cell.getType());
      assertEquals(number, cell.asNumber().doubleValue());
    } else if (value.get() instanceof Long count
        && Math.abs(count) <= WorkbookTable.LARGEST_EXACT) {
      assertEquals(CellType.NUMBER, cell.getType());
      assertEquals(0, BigDecimal.valueOf(count).compareTo(cell.asNumber()), cell::toString);
    } else if (value.get() instanceof Instant moment) {
      assertEquals(CellType.NUMBER, cell.getType());
      Instant read = cell.asDate().toInstant(ZoneOffset.UTC);
      assertTrue(Math.abs(ChronoUnit.MILLIS.between(moment, read)) <= 1, read::toString);
    } else {
      assertEquals(CellType.STRING, cell.getType());
      assertEquals(value.get().toString(), unescaped(cell.getText()));
    }
  }

  private static String unescaped(String text) {
    return text.replace("_x000D_", "\r").replace("_x005F_", "_");
  }

  @Test
  void theFirstSheetTellsOfEveryTableColumnVerdictAndCaution() throws IOException {
    String guide =
        rows("read-me").stream()
            .flatMap(Row::stream)
            .filter(cell -> cell != null)
            .map(Cell::getText)
            .collect(Collectors.joining("\n"));

    assertTrue(guide.contains("Keep clear of the spray."), guide);
    assertTrue(guide.contains(SampleTable.SPEC.meaning()), guide);
    for (TableColumn<?> column : SampleTable.SPEC.columns()) {
      assertTrue(guide.contains(column.name() + "\n"), guide);
      assertTrue(guide.contains(column.meaning()), guide);
    }
    for (Verdict verdict : Verdict.values()) {
      assertTrue(guide.contains(verdict.word() + "\n" + verdict.meaning()), guide);
    }
  }

  @Test
  void theHeadingsStayInSightAndHaveFilters() throws IOException {
    String sheet = part("xl/worksheets/sheet2.xml");

    assertTrue(sheet.contains("state=\"frozen\""), sheet);
    assertTrue(sheet.contains("<autoFilter ref=\"A1:E20\""), sheet);
    assertTrue(!sheet.contains("<f>"), "no formula");
  }

  /** 9 is A4: ECMA-376 Part 1, 18.3.1.63. */
  @Test
  void itPrintsOnA4AndTheFirstSheetWithAllItsColumnsSideBySide() throws IOException {
    String guide = part("xl/worksheets/sheet1.xml");
    String table = part("xl/worksheets/sheet2.xml");

    assertTrue(guide.contains("paperSize=\"9\"") && table.contains("paperSize=\"9\""), table);
    assertTrue(guide.contains("<pageSetUpPr fitToPage=\"true\""), guide);
    assertTrue(guide.contains("fitToWidth=\"1\" fitToHeight=\"0\""), guide);
    assertFalse(table.contains("<pageSetUpPr fitToPage=\"true\""), table);
  }

  @Test
  void textThatAWorkbookCannotHoldIsShownOrCutAndSaysSo() {
    assertEquals("=cmd()", WorkbookText.of("=cmd()"));
    assertEquals(
        "bell \u2407, none \u2400, half \uFFFD, 😀",
        WorkbookText.of("bell \u0007, none \0, half \uD83D, 😀"));
    assertEquals("_x005F_x0041_ and _x1_", WorkbookText.of("_x0041_ and _x1_"));
    assertEquals("a_x000D_\nb", WorkbookText.of("a\r\nb"));
    String longest = "x".repeat(WorkbookText.LONGEST);
    assertEquals(longest, WorkbookText.of(longest));
    String cut = WorkbookText.of(longest + "y");
    assertEquals(WorkbookText.LONGEST, cut.length());
    assertTrue(cut.endsWith("x [cut: 32,768 characters in all]"), cut);
  }
}
