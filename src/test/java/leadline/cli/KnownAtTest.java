package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was known at a moment of the past comes out again, and stands beside what is known now. */
@Tag("long")
class KnownAtTest {

  private static final Path EXPORTS = Program.HOME.resolve("sample-data/golden");
  private static final List<String> TABLES =
      List.of(
          "component_rates",
          "overhaul_intervals",
          "part_findings",
          "spring_breakage",
          "intake_log",
          "unmapped_words");

  private final Program program = Program.forScheduler();

  @TempDir Path folder;

  private Path out;
  private String firstKnownAt;
  private String firstRun;
  private SortedMap<String, String> firstTables;

  @BeforeEach
  void theFirstExportsArePublishedAndThenMoreComeIn() throws IOException {
    out = folder.resolve("out");
    ingest("1-first-exports");
    Ran computed = compute();
    firstKnownAt = computed.step().get("known_at").asText();
    firstRun = computed.step().get("run").asText();
    publish();
    firstTables = tables(out.resolve("2024-12"));
    ingest("2-later-exports");
    ingest("3-resent");
  }

  @Test
  void theDigitsOfThenComeOutAgainBesideTheCurrentMonth() throws IOException {
    String now = compute().step().get("run").asText();
    publish();
    assertLeadsTo(now, "2024-12");
    assertNotEquals(firstTables, tables(out.resolve("2024-12")));

    Ran again = compute("--known-at", firstKnownAt);
    String then = again.step().get("run").asText();
    assertEquals(firstKnownAt, again.step().get("known_at").asText());
    assertNotEquals(firstRun, then);
    String beside = folderOf(publish("--known-at", firstKnownAt));

    assertTrue(beside.matches("2024-12-known-at-20250201T[0-9]{6}Z"), beside);
    assertLeadsTo(then, beside);
    assertLeadsTo(now, "2024-12");
    assertLeadsTo(now, "latest");
    assertEquals(firstTables, tables(out.resolve(beside)));
  }

  @Test
  void aMomentBetweenTwoBatchesKnowsTheEarlier() throws IOException {
    Instant between = Instant.parse(firstKnownAt).plusMillis(1);

    assertEquals(firstKnownAt, compute("--known-at", between).step().get("known_at").asText());
  }

  /** Until the month is computed anew no run knows more, but the lake does. */
  @Test
  void whatWasKnownThenStandsBesideEvenBeforeTheMonthIsComputedAnew() throws IOException {
    String beside = folderOf(publish("--known-at", firstKnownAt));

    assertTrue(beside.startsWith("2024-12-known-at-"), beside);
    assertLeadsTo(firstRun, beside);
    assertLeadsTo(firstRun, "2024-12");
  }

  @Test
  void anEarlierRunIsPublishedByItsNameBesideTheCurrentMonth() throws IOException {
    String now = compute().step().get("run").asText();
    publish();
    String beside = folderOf(publish("--run", firstRun));

    assertTrue(beside.startsWith("2024-12-known-at-"), beside);
    assertLeadsTo(firstRun, beside);
    assertLeadsTo(now, "2024-12");
    assertEquals(firstTables, tables(out.resolve(beside)));
  }

  @Test
  void theNewestRunIsTheCurrentMonthByItsNameToo() throws IOException {
    String now = compute().step().get("run").asText();

    publish("--run", now);
    assertLeadsTo(now, "2024-12");
    assertLeadsTo(now, "latest");
  }

  @Test
  void whatIsKnownNowIsTheCurrentMonthWhenAskedForByItsMoment() throws IOException {
    Ran computed = compute();

    publish("--known-at", computed.step().get("known_at").asText());
    assertLeadsTo(computed.step().get("run").asText(), "2024-12");
  }

  @Test
  void anEarlierMonthDoesNotTakeTheLatestLink() throws IOException {
    Object[] november = {"--lake", folder.resolve("lake"), "--month", "2024-11", "--json"};
    program.run(Stream.concat(Stream.of("compute"), Stream.of(november)).toArray()).clean();
    program
        .run(Stream.concat(Stream.of("publish", "--out", out), Stream.of(november)).toArray())
        .clean();

    assertTrue(Files.isDirectory(out.resolve("2024-11")));
    assertEquals(target("2024-12"), target("latest"));
  }

  private void ingest(String inbox) {
    Ran ran =
        program.run(
            "ingest",
            "--inbox",
            EXPORTS.resolve(inbox),
            "--lake",
            folder.resolve("lake"),
            "--json");
    assertEquals(0, ran.exit(), ran.err());
    assertFalse(ran.step().path("batch").asText().isEmpty());
  }

  private Ran compute(Object... more) {
    return program
        .run(
            Stream.concat(
                    Stream.of(
                        "compute",
                        "--lake",
                        folder.resolve("lake"),
                        "--month",
                        "2024-12",
                        "--json"),
                    Stream.of(more))
                .toArray())
        .clean();
  }

  private Ran publish(Object... more) {
    return program
        .run(
            Stream.concat(
                    Stream.of(
                        "publish",
                        "--lake",
                        folder.resolve("lake"),
                        "--month",
                        "2024-12",
                        "--out",
                        out,
                        "--json"),
                    Stream.of(more))
                .toArray())
        .clean();
  }

  private static String folderOf(Ran published) {
    assertEquals(1, published.step().get("folders").size());
    return Path.of(published.step().get("folders").get(0).asText()).getFileName().toString();
  }

  private void assertLeadsTo(String run, String link) throws IOException {
    assertEquals(Path.of(".runs", run), target(link));
  }

  private Path target(String link) throws IOException {
    assertTrue(Files.exists(out.resolve(link), LinkOption.NOFOLLOW_LINKS));
    return Files.readSymbolicLink(out.resolve(link));
  }

  private static SortedMap<String, String> tables(Path month) throws IOException {
    SortedMap<String, String> tables = new TreeMap<>();
    for (String table : TABLES) {
      tables.put(table, Files.readString(month.resolve("tables/" + table + ".csv")));
    }
    return tables;
  }
}
