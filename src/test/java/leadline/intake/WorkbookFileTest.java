package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.fleet.ReturnLayout;
import leadline.problem.FileFault;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Return sheets as workbooks: what a spreadsheet program makes of cells, and what may go wrong. */
class WorkbookFileTest {

  private static final List<String> COLUMNS =
      RecordKind.RETURNS.layout().columns().stream().map(Column::name).toList();

  private static final String DATE = "yyyy-mm-dd";

  @Test
  void cellsSayTheSameAsTextsInCsv() {
    ReadExport workbook =
        read(
            sheet -> {
              row(sheet, 1, "V1", "D-1", "due-overhaul");
              put(sheet, 1, ReturnLayout.OVERHAUL, "D-1");
              put(sheet, 1, ReturnLayout.MACHINE, "ME");
              put(sheet, 1, ReturnLayout.COMPONENT, "fuel-injector");
              sheet.value(1, ReturnLayout.UNIT.index(), 3);
              sheet.value(1, ReturnLayout.PLACE.index(), 1.0);
              date(sheet, ReturnLayout.DONE_ON, LocalDate.of(2024, 3, 1));
              sheet.value(1, ReturnLayout.MACHINE_HOURS.index(), 8550.5);
              put(sheet, 1, ReturnLayout.REASON, " planned ");
              put(sheet, 1, ReturnLayout.REMARK, "=1+1, \"so\"\nand \uD83D\uDE00");
              date(sheet, ReturnLayout.ANSWERED_ON, LocalDate.of(2024, 3, 2));
            });
    ReadExport csv =
        ReadExport.of(
            RecordKind.RETURNS,
            "vessel,row,about,overhaul,machine,component,unit,place,done_on,machine_hours,reason,"
                + "remark,answered_on\n"
                + "V1,D-1,due-overhaul,D-1,ME,fuel-injector,3,1,2024-03-01,8550.5,planned,"
                + "\"'=1+1, \"\"so\"\"\nand \uD83D\uDE00\",2024-03-02\n");
    assertEquals(List.of(), workbook.refusals());
    assertEquals(csv.cells(), workbook.cells());
    assertEquals(List.of(2L), workbook.storedLines());
    assertEquals(1, workbook.tally().trimmedCells());
  }

  @Test
  void aMomentNeedsItsOffsetAndANumberInADateColumnIsNone() {
    ReadExport read =
        read(
            sheet -> {
              row(sheet, 1, "V1", "Q-1", "question");
              sheet.value(
                  1, ReturnLayout.ANSWERED_ON.index(), LocalDateTime.of(2024, 3, 1, 12, 30));
              sheet.style(1, ReturnLayout.ANSWERED_ON.index()).format("yyyy-mm-dd hh:mm").set();
              row(sheet, 2, "V1", "Q-2", "question");
              sheet.value(2, ReturnLayout.ANSWERED_ON.index(), 45352);
            });
    assertEquals(
        List.of("2: moment-without-offset answered_on", "3: not-a-moment answered_on"),
        read.refusals());
  }

  /** A program turned 3/1 into a date: the day must not be read as a count of days. */
  @Test
  void aDateInAColumnOfNumbersIsRefusedAndNotReadAsANumber() {
    ReadExport read =
        read(
            sheet -> {
              row(sheet, 1, "V1", "Q-1", "question");
              sheet.value(1, ReturnLayout.MACHINE_HOURS.index(), LocalDate.of(2024, 3, 1));
              sheet
                  .style(1, ReturnLayout.MACHINE_HOURS.index())
                  .format("d\\.mmm\" of\" [$-407]yy")
                  .set();
            });
    assertEquals(List.of("2: not-hours machine_hours"), read.refusals());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.0", "#,##0", "0\" days\"", "[Red]0", "0\\d", "General", "0.00E+00"})
  void formatsOfNumbersAreNoDates(String format) {
    ReadExport read =
        read(
            sheet -> {
              row(sheet, 1, "V1", "Q-1", "question");
              sheet.value(1, ReturnLayout.HOURS_SINCE_NEW.index(), 8550.5);
              sheet.style(1, ReturnLayout.HOURS_SINCE_NEW.index()).format(format).set();
              put(sheet, 1, ReturnLayout.OVERHAUL, "O1");
              put(sheet, 1, ReturnLayout.PART, "nozzle");
              put(sheet, 1, ReturnLayout.ANSWERED_ON, "2024-03-01");
            });
    assertEquals(List.of(), read.refusals());
  }

  @Test
  void aTickIsNoWord() {
    ReadExport read =
        read(
            sheet -> {
              row(sheet, 1, "V1", "Q-1", "question");
              sheet.value(1, ReturnLayout.FOUND.index(), true);
            });
    assertEquals(List.of("2: unknown-word found"), read.refusals());
  }

  @Test
  void blankRowsAreNoRowsAndACellBehindTheHeaderIsOneTooMany() {
    ReadExport read =
        read(
            sheet -> {
              row(sheet, 1, "V1", "Q-1", "question");
              row(sheet, 2, " ", "", "");
              row(sheet, 4, "V1", "Q-2", "question");
              row(sheet, 5, "V1", "Q-3", "question");
              sheet.value(5, COLUMNS.size() + 2, "a note");
            });
    assertEquals(List.of(2L, 5L), read.storedLines());
    assertEquals(List.of("6: wrong-field-count"), read.refusals());
    assertEquals(3, read.tally().rowsRead());
  }

  @Test
  void unknownColumnsAreKeptAside() {
    ReadExport read =
        ReadExport.ofWorkbook(
            RecordKind.RETURNS,
            workbook(
                "Returns (2)",
                sheet -> {
                  row(sheet, 0, "vessel", "Row", "about");
                  sheet.value(0, 3, "Superintendent");
                  row(sheet, 1, "V1", "Q-1", "question");
                  sheet.value(1, 3, "seen");
                }));
    assertEquals(new TreeMap<>(Map.of("superintendent", "seen")), read.stored().get(0).extras());
  }

  @Test
  void aWorkbookWithoutTheSheetSaysWhichItHas() {
    assertEquals(
        List.of(
            "returns.xlsx, line 1: the workbook has no sheet returns, only \"help\"; give the sheet"
                + " that holds the rows this name."),
        sentences(workbook("help", sheet -> sheet.value(0, 0, "vessel"))));
  }

  @Test
  void anEmptySheetAndASheetWithoutItsColumns() {
    assertEquals(
        List.of(
            "returns.xlsx, line 1: the file is empty; export it again, with a header line even if"
                + " there are no rows."),
        sentences(workbook("returns", sheet -> {})));
    assertEquals(
        List.of(
            "returns.xlsx, line 1, column about: the header lacks this column, which every row"
                + " needs; add it and export again."),
        sentences(
            workbook(
                "returns",
                sheet -> {
                  sheet.value(0, 0, "vessel");
                  sheet.value(0, 1, "row");
                })));
  }

  @Test
  void aLockedWorkbook() {
    byte[] locked = new byte[4096];
    byte[] signature = {
      (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
    };
    System.arraycopy(signature, 0, locked, 0, signature.length);
    assertEquals(
        List.of(
            "returns.xlsx, line 1: the workbook is locked with a password, or of the older format"
                + " .xls; save it as .xlsx without a password, or send the sheet as CSV."),
        sentences(locked));
  }

  @Test
  void noWorkbookAtAll() {
    String damaged =
        "returns.xlsx, line 1: the file is no workbook or a damaged one; save it again as .xlsx, or"
            + " send the sheet as CSV.";
    assertEquals(
        List.of(damaged), sentences("vessel,row,about\n".getBytes(StandardCharsets.UTF_8)));
    byte[] whole = filled();
    assertEquals(List.of(damaged), sentences(Arrays.copyOf(whole, whole.length / 2)));
  }

  /** Whatever bytes are changed, the file is read or called damaged; nothing else comes out. */
  @Test
  void damageOfAnyKindIsToldAsSuch() {
    Random random = new Random(5);
    byte[] whole = filled();
    for (int drawing = 0; drawing < 200; drawing++) {
      byte[] damaged = whole.clone();
      for (int i = 0; i < 1 + random.nextInt(20); i++) {
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
      }
      ReadExport read = ReadExport.ofWorkbook(RecordKind.RETURNS, damaged);
      if (read.outcome() instanceof FileOutcome.UnusableFile unusable) {
        assertEquals(1, unusable.faults().size());
        assertEquals(0, read.stored().size());
      } else {
        assertEquals(read.tally().rowsRead(), read.stored().size() + read.refused().size());
      }
    }
  }

  /** A small file that unpacks to gigabytes must not fill the memory. */
  @Test
  void aWorkbookThatUnpacksToTooMuchIsNotUnpacked() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] blanks = new byte[1 << 20];
      for (int i = 0; i < 300; i++) {
        zip.write(blanks);
      }
    }
    assertTrue(bytes.size() < 1 << 20);
    assertEquals(
        List.of(
            "returns.xlsx, line 1: the workbook is larger than any return sheet; take out pictures"
                + " and other sheets, or send the sheet as CSV."),
        sentences(bytes.toByteArray()));
  }

  @Test
  void onlyReturnSheetsMayBeWorkbooks(@TempDir Path inbox) throws IOException {
    for (String name :
        List.of(
            "returns_V1.xlsx",
            "RETURNS.XLSX",
            "hours.xlsx",
            "~$returns_V1.xlsx",
            "returns_V2.csv")) {
      Files.write(inbox.resolve(name), name.getBytes(StandardCharsets.UTF_8));
    }
    Inbox found = Inbox.list(inbox);
    assertEquals(
        List.of("RETURNS.XLSX", "returns_V1.xlsx", "returns_V2.csv"),
        found.exports().stream().map(ExportFile::path).toList());
    assertEquals(List.of("hours.xlsx", "~$returns_V1.xlsx"), found.ignored());
  }

  private static byte[] filled() {
    return workbook(
        "returns",
        sheet -> {
          header(sheet);
          for (int i = 1; i < 30; i++) {
            row(sheet, i, "V1", "Q-" + i, "question");
          }
        });
  }

  private static ReadExport read(Consumer<Worksheet> rows) {
    return ReadExport.ofWorkbook(
        RecordKind.RETURNS,
        workbook(
            "returns",
            sheet -> {
              header(sheet);
              rows.accept(sheet);
            }));
  }

  private static List<String> sentences(byte[] bytes) {
    return ReadExport.ofWorkbook(RecordKind.RETURNS, bytes).unusable().faults().stream()
        .map(FileFault::sentence)
        .toList();
  }

  private static void header(Worksheet sheet) {
    for (int i = 0; i < COLUMNS.size(); i++) {
      sheet.value(0, i, COLUMNS.get(i));
    }
  }

  private static void row(Worksheet sheet, int row, String vessel, String id, String about) {
    sheet.value(row, 0, vessel);
    sheet.value(row, 1, id);
    sheet.value(row, 2, about);
  }

  private static void put(Worksheet sheet, int row, Column<?> column, String text) {
    sheet.value(row, column.index(), text);
  }

  private static void date(Worksheet sheet, Column<?> column, LocalDate day) {
    sheet.value(1, column.index(), day);
    sheet.style(1, column.index()).format(DATE).set();
  }

  private static byte[] workbook(String sheet, Consumer<Worksheet> rows) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(bytes, "test", "1.0")) {
      rows.accept(workbook.newWorksheet(sheet));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
