package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import leadline.fleet.HoursLayout;
import leadline.fleet.RecordKind;
import leadline.problem.RowFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A row that is broken as a whole costs itself and nothing else. */
class BrokenRowsTest {

  private static final String HEADER = "vessel,machine,read_at,hours,kind,remark\n";
  private static final String BEFORE = "V1,ME,2024-03-01,100,counter,before\n";
  private static final String AFTER = "V1,ME,2024-03-02,120,counter,after\n";

  private static ReadExport between(String middle) {
    return between(middle.getBytes(StandardCharsets.UTF_8));
  }

  private static ReadExport between(byte[] middle) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes((HEADER + BEFORE).getBytes(StandardCharsets.UTF_8));
    bytes.writeBytes(middle);
    bytes.writeBytes(("\n" + AFTER).getBytes(StandardCharsets.UTF_8));
    return ReadExport.of(RecordKind.HOURS, bytes.toByteArray());
  }

  private static void assertOnlyTheNeighboursStay(ReadExport read, int linesBetween) {
    assertEquals(List.of(2L, 3L + linesBetween), read.storedLines());
    assertEquals(
        List.of("before", "after"),
        read.stored().stream().map(row -> row.cells().need(HoursLayout.REMARK)).toList());
  }

  private static String sentence(ReadExport read) {
    RowFault fault = read.refused().get(0).faults().get(0);
    return fault.sentence();
  }

  @Test
  void theGoodTwinOfTheseRowsIsStored() {
    assertEquals(3, between("V1,ME,2024-03-01,110,counter,\"ok\"").tally().stored());
  }

  /** A row that is broken as a whole may name anything. */
  @Test
  void aRefusedRowSaysWhichVesselItNames() {
    assertEquals("V1", between("V1,ME,2024-03-01,many,counter,").refused().get(0).vessel());
    assertEquals("", between(",ME,2024-03-01,110,counter,").refused().get(0).vessel());
    assertEquals("", between("V1,ME,2024-03-01,110").refused().get(0).vessel());
  }

  @Test
  void aQuoteThatIsNeverClosed() {
    String row = "V1,ME,2024-03-01,110,counter,\"oops";
    ReadExport read = between(row);
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: open-quote"), read.refusals());
    assertEquals(row, read.refused().get(0).raw());
  }

  @Test
  void aQuoteThatIsNeverClosedAtTheEndOfTheFile() {
    ReadExport read =
        ReadExport.of(
            RecordKind.HOURS, HEADER + BEFORE + AFTER + "V1,ME,2024-03-03,140,counter,\"oops");
    assertEquals(List.of("4: open-quote"), read.refusals());
    assertEquals(2, read.tally().stored());
  }

  @Test
  void aQuoteThatIsNeverClosedDoesNotSwallowRowsUpToTheNextQuote() {
    String rows =
        """
        V1,ME,2024-03-01,110,counter,"oops
        V1,ME,2024-03-01,112,counter,5" pipe
        V1,ME,2024-03-01,113,counter,"fine"
        V1,ME,2024-03-01,114,counter,closed"
        V1,ME,2024-03-01,115,counter,"two
        lines\"""";
    ReadExport read = between(rows);
    assertEquals(List.of("3: open-quote"), read.refusals());
    assertEquals(List.of(2L, 4L, 5L, 6L, 7L, 9L), read.storedLines());
  }

  @Test
  void aQuoteThatALaterRowHappensToCloseDoesNotSwallowTheRowsBetween() {
    String rows =
        """
        V1,ME,2024-03-01,110,counter,"oops
        V1,ME,2024-03-01,112,counter,
        V1,ME,2024-03-01,113,counter,closed\"""";
    ReadExport read = between(rows);
    assertEquals(List.of("3: open-quote"), read.refusals());
    assertEquals(List.of(2L, 4L, 5L, 6L), read.storedLines());
  }

  @Test
  void aRemarkOfAHundredLinesIsReadAndALongerOneIsRefusedLineByLine() {
    String row = "V1,ME,2024-03-01,110,counter,\"one" + "\nmore".repeat(99) + "\"";
    assertEquals(3, between(row).tally().stored());
    ReadExport longer = between(row.replace("one", "one\nmore"));
    assertOnlyTheNeighboursStay(longer, 101);
    assertEquals(101, longer.tally().refused());
    assertEquals("3: open-quote", longer.refusals().get(0));
  }

  @Test
  void linesThatWouldNotMakeARowAreNotJoined() {
    ReadExport read = between("V1,ME,\"2024\n-03-01\",110,counter");
    assertOnlyTheNeighboursStay(read, 2);
    assertEquals(List.of("3: open-quote", "4: wrong-field-count"), read.refusals());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "V1,\"ME\"2,2024-03-01,110,counter,x",
        "V1,\"ME\" ,2024-03-01,110,counter,x",
        "V1,\"ME\"x\",2024-03-01,110,counter,x"
      })
  void textBehindAClosingQuote(String row) {
    ReadExport read = between(row);
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: text-after-quote"), read.refusals());
    assertEquals(row, read.refused().get(0).raw());
  }

  @Test
  void aBlankBeforeAnOpeningQuote() {
    ReadExport read = between("V1, \"ME\",2024-03-01,110,counter,x");
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: blank-before-quote"), read.refusals());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "V1,ME,2024-03-01,110,counter | The row has 5 fields and the header 6",
        "V1,ME,2024-03-01,110,counter,a,b | The row has 7 fields and the header 6",
        "V1 | The row has 1 field and the header 6",
        "V1;ME;2024-03-01;110;counter;x | The row has 1 field and the header 6"
      })
  void anotherNumberOfFields(String row, String beginning) {
    ReadExport read = between(row);
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: wrong-field-count"), read.refusals());
    assertTrue(sentence(read).startsWith(beginning), sentence(read));
  }

  @Test
  void moreFieldsThanAnyRowHas() {
    ReadExport read = between(",".repeat(99_999));
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: wrong-field-count"), read.refusals());
  }

  @Test
  void aNulByte() {
    ReadExport read = between("V1,M\0E,2024-03-01,110,counter,x");
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: nul-byte"), read.refusals());
    assertEquals("V1,M\\x00E,2024-03-01,110,counter,x", read.refused().get(0).raw());
  }

  @Test
  void aRowOfAMegabyte() {
    String row = "V1,ME,2024-03-01,110,counter," + "x".repeat(1 << 20);
    ReadExport read = between(row);
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: row-too-long"), read.refusals());
    assertEquals(row, read.refused().get(0).raw());
  }

  @Test
  void theLongestRowIsRead() {
    String row = "V1,ME,2024-03-01,110,counter,";
    String longest = row + "x".repeat(100_000 - row.length());
    assertEquals(3, between(longest).tally().stored());
    assertEquals(List.of("3: row-too-long"), between(longest + "x").refusals());
  }

  @Test
  void aRemarkOfManyLinesIsNoLongerThanTheLongestRow() {
    String row = "V1,ME,2024-03-01,110,counter,\"one\r\n";
    String longest = row + "x".repeat(100_000 - row.length() - 1) + "\"";
    assertEquals(3, between(longest).tally().stored());
    ReadExport longer = between(row + "x" + longest.substring(row.length()));
    assertOnlyTheNeighboursStay(longer, 2);
    assertEquals(List.of("3: open-quote", "4: wrong-field-count"), longer.refusals());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x", "xx"})
  void ofALineLongerThanMemoryAllowsTheBeginningIsKept(String shift) {
    String row = "V1,ME,2024-03-01,110,counter," + shift + "€".repeat(4 << 20);
    ReadExport read = between(row);
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: row-too-long"), read.refusals());
    String raw = read.refused().get(0).raw();
    assertTrue(raw.startsWith(row.substring(0, 1_390_000)));
    int kept = raw.indexOf("... (");
    long missing = row.substring(kept).getBytes(StandardCharsets.UTF_8).length;
    assertEquals("... (" + missing + " more bytes)", raw.substring(kept));
  }

  /** In windows-1252 the letter ü is the byte FC, which UTF-8 never uses (RFC 3629, section 1). */
  @Test
  void aRowInAnotherCodePage() {
    ReadExport read =
        between(
            "V1,ME,2024-03-01,110,counter,Düse undicht".getBytes(Charset.forName("windows-1252")));
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: not-utf8"), read.refusals());
    assertEquals("V1,ME,2024-03-01,110,counter,D\\xFCse undicht", read.refused().get(0).raw());
    assertTrue(sentence(read).contains("D\\xFCse undicht"), sentence(read));
  }

  /** Sequences that RFC 3629 forbids: overlong, surrogates, beyond U+10FFFF, cut short, alone. */
  @ParameterizedTest
  @ValueSource(strings = {"c080", "e080af", "eda080", "f4908080", "f09f9a", "80", "c3", "fffe"})
  void bytesThatAreNotUtf8(String hex) {
    byte[] wrong = HexFormat.of().parseHex(hex);
    ByteArrayOutputStream row = new ByteArrayOutputStream();
    row.writeBytes("V1,ME,2024-03-01,110,counter,".getBytes(StandardCharsets.UTF_8));
    row.writeBytes(wrong);
    ReadExport read = between(row.toByteArray());
    assertOnlyTheNeighboursStay(read, 1);
    assertEquals(List.of("3: not-utf8"), read.refusals());
    assertEquals(
        "V1,ME,2024-03-01,110,counter,"
            + HexFormat.of().withUpperCase().withPrefix("\\x").formatHex(wrong),
        read.refused().get(0).raw());
  }

  @Test
  void aLetterLostBeforeTheExportIsText() {
    assertEquals(3, between("V1,ME,2024-03-01,110,counter,D\uFFFDse 🚢").tally().stored());
  }

  @Test
  void everythingThatARowsBytesBrokeIsSaid() {
    ReadExport read =
        between(
            ("V1,M\0E,2024-03-01,110,counter,\"Düse\nundicht\" x" + "y".repeat(100_000))
                .getBytes(Charset.forName("windows-1252")));
    assertOnlyTheNeighboursStay(read, 2);
    assertEquals(List.of("3: not-utf8, nul-byte, open-quote", "4: row-too-long"), read.refusals());
  }

  @Test
  void aQuotedRemarkInAnotherCodePageIsOneRefusedRow() {
    ReadExport read =
        between(
            "V1,ME,2024-03-01,110,counter,\"Düse\nundicht\""
                .getBytes(Charset.forName("windows-1252")));
    assertOnlyTheNeighboursStay(read, 2);
    assertEquals(List.of("3: not-utf8"), read.refusals());
  }
}
