package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Exports as ships send them: whatever is wrong with one of them, the ship reads where and why, and
 * all the rest is stored.
 */
class BadExportsTest {

  private static final String HEADER = SmallInbox.HOURS_HEADER;
  private static final String GOOD = "plover,ME,2024-04-30,2500,counter,\n";

  @TempDir Path folder;

  private record Case(
      String name, String file, String text, Charset encoding, String sentence, int stored) {

    Case(String name, String file, String text, String sentence, int stored) {
      this(name, file, text, StandardCharsets.UTF_8, sentence, stored);
    }

    byte[] bytes() {
      return text.getBytes(encoding);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static Case hours(String name, String badRow, String sentence) {
    return new Case(name, "hours_bad.csv", HEADER + GOOD + badRow + "\n" + GOOD, sentence, 2);
  }

  static Stream<Case> badRows() {
    return Stream.of(
        hours(
            "hours with a thousands separator",
            "plover,ME,2024-05-31,\"3,000\",counter,",
            "line 3, column hours: hours \"3,000\" is not running hours"),
        hours(
            "hours in words",
            "plover,ME,2024-05-31,many,counter,",
            "line 3, column hours: hours \"many\" is not running hours"),
        hours(
            "a date as a German ship writes it",
            "plover,ME,31.05.2024,3000,counter,",
            "line 3, column read_at: read_at \"31.05.2024\" is not a time"),
        hours(
            "a date in the future",
            "plover,ME,2025-03-01,3000,counter,",
            "line 3, column read_at: read_at \"2025-03-01\" lies in the future, as the file was read"
                + " on 2025-02-01"),
        hours(
            "30 February",
            "plover,ME,2024-02-30,3000,counter,",
            "line 3, column read_at: read_at \"2024-02-30\" does not exist: February 2024 has the"
                + " days 01 to 29."),
        hours(
            "an unknown word",
            "plover,ME,2024-05-31,3000,metre,",
            "line 3, column kind: kind \"metre\" is not a word of this column: write exactly one of"
                + " counter, total, replaced."),
        hours(
            "an empty key cell",
            "plover,,2024-05-31,3000,counter,",
            "line 3, column machine: machine is empty"),
        hours("a field too few", "plover,ME,2024-05-31,3000", "line 3: The row has 4 fields"),
        hours(
            "a quote that is never closed",
            "plover,ME,2024-05-31,3000,counter,\"broken",
            "line 3: A field begins with a double quote that is never closed"),
        hours(
            "a NUL byte",
            "plover,ME,2024-05-31,3000,counter,\0",
            "line 3: The row holds a NUL byte"),
        hours(
            "a row of a megabyte",
            "plover,ME,2024-05-31,3000,counter," + "x".repeat(1_000_000),
            "line 3: The row is longer than 100000 characters"),
        // In windows-1252 the letter u with two dots is the byte FC, which UTF-8 never uses
        // (RFC 3629, section 1).
        new Case(
            "a row in windows-1252",
            "hours_bad.csv",
            HEADER + GOOD + "plover,ME,2024-05-31,3000,counter,gepr\u00fcft\n" + GOOD,
            Charset.forName("windows-1252"),
            "line 3: The row is not UTF-8 at \"31,3000,counter,gepr\\xFCft\"",
            2),
        new Case(
            "an unknown part",
            "findings_bad.csv",
            """
            vessel,overhaul,part,mode_no,opened
            plover,O1,nozzel,1,yes
            plover,O1,nozzle,1,yes
            """,
            "line 2, column part: part \"nozzel\" is not a part of the catalogue",
            1),
        new Case(
            "an unknown component",
            "overhauls_bad.csv",
            """
            vessel,overhaul,machine,component,done_on,reason
            plover,O1,ME,fuel-valve,2024-02-10,planned
            plover,O2,ME,fuel-injector,2024-02-10,planned
            """,
            "line 2, column component: component \"fuel-valve\" is not a component of the catalogue",
            1));
  }

  @ParameterizedTest
  @MethodSource("badRows")
  void aBadRowIsRefusedAndAllOthersAreStored(Case bad) {
    SmallInbox inbox = SmallInbox.in(folder.resolve("inbox")).with(bad.file(), bad.bytes());
    Ran ran = ingest(inbox);

    assertEquals(0, ran.exit());
    assertSentence(bad, ran);
    assertEquals(SmallInbox.ROWS + bad.stored(), ran.step().get("rows_stored").asInt());
    assertEquals(1, ran.step().get("rows_refused").asInt());
    assertEquals(SmallInbox.ROWS + bad.stored() + 1, ran.step().get("rows_read").asInt());
  }

  static Stream<Case> unusableFiles() {
    return Stream.of(
        new Case("an empty file", "hours_bad.csv", "", "line 1: the file is empty", 0),
        new Case(
            "a file without a key column",
            "hours_bad.csv",
            "vessel,read_at,hours,kind\nplover,2024-04-30,2500,counter\n",
            "line 1, column machine: the header lacks this column",
            0),
        new Case(
            "a header with one name twice",
            "hours_bad.csv",
            "vessel,machine,read_at,hours,hours,kind\nplover,ME,2024-04-30,1,2,counter\n",
            "line 1, column hours: the header has this name more than once",
            0),
        new Case(
            "a file in UTF-16",
            "hours_bad.csv",
            HEADER + GOOD,
            StandardCharsets.UTF_16,
            "line 1: the header holds NUL bytes, so the file is UTF-16",
            0),
        new Case(
            "a header that names nothing known",
            "hours_bad.csv",
            "a,b,c\n1,2,3\n",
            "line 1: no column name is known in \"a,b,c\"",
            0),
        new Case(
            "a file that does not say what it holds",
            "crew.csv",
            "a,b\n",
            "line 1: the name does not say what the file holds",
            0));
  }

  @ParameterizedTest
  @MethodSource("unusableFiles")
  void anUnusableFileIsNamedAndAllOthersAreStored(Case bad) {
    SmallInbox inbox = SmallInbox.in(folder.resolve("inbox")).with(bad.file(), bad.bytes());
    Ran ran = ingest(inbox);

    assertEquals(2, ran.exit());
    assertSentence(bad, ran);
    assertEquals(SmallInbox.ROWS, ran.step().get("rows_stored").asInt());
    assertEquals(SmallInbox.ROWS, ran.step().get("rows_read").asInt());
    assertEquals(1, ran.step().get("files_unusable").size());
  }

  @Test
  void theSameFileAsFarAsItGoesMakesNoSecondBatch() {
    SmallInbox inbox = SmallInbox.in(folder.resolve("inbox")).with("hours_bad.csv", "");
    ingest(inbox);
    Ran again = Program.forScheduler().run("ingest", "--inbox", inbox, "--lake", lake());

    assertEquals(2, again.exit());
    assertEquals(
        "Nothing new in " + inbox + "; already in the lake: 2 files; unusable: 1 file.\n",
        again.out());
  }

  @Test
  void everyFaultOfARowIsSaid() {
    SmallInbox inbox =
        SmallInbox.in(folder.resolve("inbox"))
            .with("hours_bad.csv", HEADER + ",ME,2024-02-30,many,metre,\n");
    Ran ran = ingest(inbox);

    assertEquals(
        List.of("vessel", "read_at", "hours", "kind"),
        ran.errorLines().stream()
            .map(line -> line.replaceAll("hours_bad.csv, line 2, column ([a-z_]+): .*", "$1"))
            .toList());
    assertEquals(1, ran.step().get("rows_refused").asInt());
  }

  @Test
  void ofManyRefusedRowsTheFirstTenAreShownAndTheRestCounted() {
    SmallInbox inbox =
        SmallInbox.in(folder.resolve("inbox"))
            .with("hours_bad.csv", HEADER + "plover,ME,2024-02-30,3000,counter,\n".repeat(1234));
    Ran ran = ingest(inbox);

    assertEquals(0, ran.exit());
    assertEquals(11, ran.errorLines().size());
    assertTrue(ran.errorLines().get(9).startsWith("hours_bad.csv, line 11, column read_at: "));
    assertEquals(
        "And 1,224 refused rows more: `leadline check --inbox " + inbox + "` lists all.",
        ran.errorLines().get(10));
  }

  @Test
  void aHeaderAloneIsAFileOfNoRows() {
    SmallInbox inbox = SmallInbox.in(folder.resolve("inbox")).with("hours_none.csv", HEADER);
    Ran ran = ingest(inbox).clean();

    assertEquals(SmallInbox.ROWS, ran.step().get("rows_stored").asInt());
    assertEquals(3, ran.step().get("files").size());
  }

  @Test
  void aColumnThatTheLayoutDoesNotKnowIsKeptAndSaid() {
    SmallInbox inbox =
        SmallInbox.in(folder.resolve("inbox"))
            .with(
                "hours_more.csv",
                "vessel,machine,read_at,hours,kind,rpm\nplover,ME,2024-04-30,2500,counter,95\n");
    Ran ran =
        ingest(inbox)
            .exitedWith(
                0,
                "hours_more.csv, line 1: the plain layout has no column rpm; the cells are kept and"
                    + " not used.");

    assertEquals("rpm", ran.step().at("/columns_not_used/hours_more.csv/0").asText());
    assertEquals(SmallInbox.ROWS + 1, ran.step().get("rows_stored").asInt());
  }

  @Test
  void aFileThatIsNotCsvIsPassedOverAndCounted() {
    SmallInbox inbox = SmallInbox.in(folder.resolve("inbox")).with("notes.txt", "none");
    Ran ran = Program.forScheduler().run("ingest", "--inbox", inbox, "--lake", lake()).clean();

    assertTrue(
        ran.out().endsWith(" 4 rows read, 4 stored, 0 refused; not CSV: 1 file.\n"), ran.out());
  }

  private Ran ingest(SmallInbox inbox) {
    return Program.forScheduler().run("ingest", "--inbox", inbox, "--lake", lake(), "--json");
  }

  private Path lake() {
    return folder.resolve("lake");
  }

  private static void assertSentence(Case bad, Ran ran) {
    assertEquals(1, ran.errorLines().size(), ran.err());
    assertTrue(ran.err().startsWith(bad.file() + ", " + bad.sentence()), ran.err());
  }
}
