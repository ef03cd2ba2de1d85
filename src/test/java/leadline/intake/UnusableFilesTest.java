package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import leadline.fleet.RecordKind;
import leadline.problem.FileFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnusableFilesTest {

  private static final String GOOD =
      "vessel,machine,read_at,hours,kind\nV1,ME,2024-03-01,8550.5,counter\n";

  private static List<String> sentences(byte[] bytes) {
    return ReadExport.of(RecordKind.HOURS, bytes).unusable().faults().stream()
        .map(FileFault::sentence)
        .toList();
  }

  private static List<String> sentences(String text) {
    return sentences(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void theGoodTwinOfTheseFilesIsUsable() {
    assertEquals(1, ReadExport.of(RecordKind.HOURS, GOOD).tally().stored());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\r\n  \n", "\uFEFF", "\uFEFF\n"})
  void anEmptyFile(String text) {
    assertEquals(
        List.of(
            "hours.csv, line 1: the file is empty; export it again, with a header line even if"
                + " there are no rows."),
        sentences(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"vessel,machine,read_at,hours,kind", "vessel,machine,read_at,hours,kind\n"})
  void aHeaderAloneIsAFileOfNoRows(String text) {
    assertEquals(
        new FileOutcome.FileTally(0, 0, 0, 0, new TreeSet<>()),
        ReadExport.of(RecordKind.HOURS, text).tally());
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32"})
  void anotherUnicodeEncoding(String encoding) {
    assertEquals(
        List.of(
            "hours.csv, line 1: the header holds NUL bytes, so the file is UTF-16 or no text at"
                + " all; save it as CSV in UTF-8."),
        sentences(GOOD.getBytes(Charset.forName(encoding))));
  }

  /** In windows-1252 the letter ü is the byte FC, which UTF-8 never uses (RFC 3629, section 1). */
  @Test
  void aHeaderInAnotherCodePage() {
    String header = "vessel,machine,read_at,hours,kind,prüfung\n";
    List<String> sentences = sentences(header.getBytes(Charset.forName("windows-1252")));
    assertEquals(1, sentences.size());
    assertTrue(
        sentences.get(0).contains("not UTF-8 at \"ead_at,hours,kind,pr\\xFCfung\""),
        sentences.get(0));
  }

  @Test
  void allThatAHeaderLacksOrRepeatsIsSaidAtOnce() {
    assertEquals(
        List.of(
            "hours.csv, line 1, column machine: the header lacks this column, which every row"
                + " needs; add it and export again.",
            "hours.csv, line 1, column hours: the header lacks this column, which every row needs;"
                + " add it and export again.",
            "hours.csv, line 1, column vessel: the header has this name more than once, so it is"
                + " open which one counts; keep one and rename the other.",
            "hours.csv, line 1, column note: the header has this name more than once, so it is open"
                + " which one counts; keep one and rename the other."),
        sentences("vessel,read_at,kind,note, VESSEL ,Note\n"));
  }

  @Test
  void aKeyColumnThatStandsForAValueWhenEmptyMayBeMissing() {
    ReadExport read = ReadExport.of(RecordKind.FINDINGS, "vessel,overhaul,part\nV1,OH-1,nozzle\n");
    assertEquals(1, read.tally().stored());
  }

  @ParameterizedTest
  @ValueSource(strings = {"vessel;machine;read_at;hours;kind\nV1;ME\n", "a,b,c\n1,2,3\n", "x\n"})
  void aHeaderWithoutAnyKnownColumn(String text) {
    List<String> sentences = sentences(text);
    assertEquals(1, sentences.size());
    assertTrue(
        sentences
            .get(0)
            .startsWith(
                "hours.csv, line 1: no column name is known in \""
                    + text.lines().findFirst().orElseThrow()),
        sentences.get(0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"vessel,\"machine\nV1,x\n", "vessel,\"mach\"ine\nV1,x\n"})
  void aHeaderWithABrokenQuote(String text) {
    List<String> sentences = sentences(text);
    assertEquals(1, sentences.size());
    assertTrue(
        sentences.get(0).startsWith("hours.csv, line 1: the header cannot be read. "),
        sentences.get(0));
  }

  @Test
  void aHeaderOfAMegabyte() {
    assertTrue(
        sentences("vessel,machine,read_at,hours,kind," + "x".repeat(1_000_000))
            .get(0)
            .contains("longer than 100000 characters"));
  }
}
