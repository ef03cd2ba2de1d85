package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Batches taken back and read again, by the commands. The engine runs 2,000 h from the end of
 * January to the end of March 2024; the second batch brings a breakdown and a word nobody knows.
 */
@Tag("long")
class CorrectionsTest {

  private static final String BREAKDOWN =
      """
      vessel,overhaul,machine,component,unit,place,done_on,reason
      plover,O1,ME,fuel-injector,1,1,2024-02-20,breakdown
      plover,O2,ME,fuel-injector,1,2,2024-02-21,worn-out
      """;

  @TempDir Path folder;

  private PublishedMonth month;
  private SmallInbox first;
  private SmallInbox second;
  private String secondBatch;

  @BeforeEach
  void twoBatches() {
    month = new PublishedMonth(Program.forScheduler(), folder, "2024-03");
    first = SmallInbox.in(folder.resolve("first"));
    second = new SmallInbox(folder.resolve("second")).with("overhauls.csv", BREAKDOWN);
    ingest(first);
    secondBatch = ingest(second).path("batch").asText();
  }

  @Test
  void aWithdrawnBatchLeavesNoTraceInNewResultsAndEveryTraceInOldOnes() throws IOException {
    List<String> before = published("before");
    String knownBefore = knownAt();
    assertEquals(List.of("1"), column(before, "breakdowns"));
    assertEquals(List.of("counts", "counts", "counts"), column(before, "standing"));
    assertEquals(List.of("worn-out"), column(before, "words"));

    JsonNode step = run("withdraw", secondBatch, "--json").clean().step();
    assertEquals(secondBatch, step.path("batch").asText());
    assertEquals(1, step.path("rows_stored").asInt());

    List<String> after = published("after");
    assertEquals(List.of("0"), column(after, "breakdowns"));
    assertEquals(List.of("counts", "counts", "withdrawn"), column(after, "standing"));
    assertEquals(List.of(), column(after, "words"));
    assertEquals(before, published("again", "--known-at", knownBefore));
  }

  @Test
  void theFilesOfAWithdrawnBatchMayBeIngestedAgain() throws IOException {
    run("withdraw", secondBatch).clean();
    JsonNode again = ingest(second);

    assertEquals("overhauls.csv", again.path("files").path(0).asText());
    assertEquals(List.of("1"), column(published("out"), "breakdowns"));
    assertEquals(
        List.of("counts", "counts", "withdrawn", "counts"), column(published("out"), "standing"));
  }

  @Test
  void whatWasWithdrawnIsSaidInWords() {
    assertEquals(
        "Withdrew batch %s: 1 stored row of 1 file count no more. Its files may be ingested again.\n"
            .formatted(secondBatch),
        run("withdraw", secondBatch).clean().out());
  }

  @Test
  void onlyABatchThatCountsIsWithdrawn() {
    run("withdraw", "no-batch")
        .exitedWith(
            2,
            "The lake holds no batch no-batch: name one of the table intake_log, or of what"
                + " `ingest` said.");
    run("withdraw", secondBatch).clean();
    Ran twice = run("withdraw", secondBatch);
    assertEquals(2, twice.exit());
    assertTrue(
        twice.err().matches("The batch \\S+ was withdrawn at 2025-02-01T06:\\S+Z: ingest its .*\n"),
        twice.err());
  }

  /** The sound lake counts as before, and a tidy keeps the rows that old results rest on. */
  @Test
  void theCountOfTheLakeAgreesAndATidyKeepsWhatWasTakenBack() throws IOException {
    List<String> before = published("before");
    String knownBefore = knownAt();
    run("withdraw", secondBatch).clean();
    run("ingest", "--again", firstBatch()).clean();

    run("tidy", "--older-than", "0m").clean();
    assertTrue(
        run("check").clean().out().endsWith("batches 3, files 5, runs 1, counts that differ 0\n"));
    assertEquals(before, published("again", "--known-at", knownBefore));
  }

  /** What is read again counts once, in the place of the old rows, and refuses anew. */
  @Test
  void aBatchReadAgainTakesThePlaceOfTheOld() throws IOException {
    List<String> before = published("before");
    String knownBefore = knownAt();

    JsonNode again = run("ingest", "--again", secondBatch, "--json").step();
    assertEquals(secondBatch, again.path("in_place_of").asText());
    assertEquals(1, again.path("rows_stored").asInt());
    assertEquals(1, again.path("rows_refused").asInt());

    List<String> after = published("after");
    assertEquals(List.of("1"), column(after, "breakdowns"));
    assertEquals(List.of("worn-out"), column(after, "words"));
    assertEquals(List.of("counts", "counts", "read-again", "counts"), column(after, "standing"));
    assertEquals(before, published("then", "--known-at", knownBefore));
    assertTrue(run("withdraw", secondBatch).err().contains("was read again as batch"));
  }

  /** By the later reading the engine ran 900 h with 12 injectors; by the first, 1,000 h. */
  @Test
  void anOldBatchReadAgainDoesNotWinOverALaterOne() throws IOException {
    SmallInbox later =
        new SmallInbox(folder.resolve("later"))
            .with("hours.csv", SmallInbox.HOURS_HEADER + "plover,ME,2024-03-31,1900,counter,\n");
    ingest(later);
    assertEquals(List.of("10800"), column(published("before"), "hours"));
    run("ingest", "--again", firstBatch()).clean();

    assertEquals(List.of("10800"), column(published("after"), "hours"));
  }

  /** Of the job's two runs the published one stays; what was taken back is so for good. */
  @Test
  void aJobTakesBackReadsAgainAndTidies() throws IOException {
    published("before");
    Path job =
        Files.writeString(
            folder.resolve("job.json"),
            """
            {
              "lake": "lake",
              "steps": [
                { "step": "withdraw", "batch": "%s" },
                { "step": "ingest", "again": "%s" },
                { "step": "compute", "month": "2024-03" },
                { "step": "compute", "month": "2024-03" },
                { "step": "publish", "month": "2024-03", "out": "by-job" },
                { "step": "tidy", "published": ["by-job"], "older_than": "1d" }
              ]
            }
            """
                .formatted(secondBatch, firstBatch()));

    JsonNode steps = month.program().run("run", job).clean().lastLine().get("steps");

    assertEquals(
        List.of("withdraw", "ingest", "compute", "compute", "publish", "tidy"),
        steps.findValuesAsText("step"));
    JsonNode offTheList = steps.get(5).get("runs_off_the_list");
    assertEquals(1, offTheList.size());
    assertEquals(steps.get(2).get("run"), offTheList.get(0));
    List<String> after = published("after");
    assertEquals(List.of("0"), column(after, "breakdowns"));
    assertEquals(
        List.of("read-again", "read-again", "counts", "counts", "withdrawn"),
        column(after, "standing"));
    assertTrue(month.program().run("run", job).err().contains("was withdrawn at"));
  }

  @Test
  void aFileThatIsGoneOrChangedIsNamedAndNothingIsReplaced() throws IOException {
    Path overhauls = second.folder().resolve("overhauls.csv");
    Files.writeString(overhauls, BREAKDOWN + "plover,O3,ME,fuel-injector,2,1,2024-02-21,planned\n");
    run("ingest", "--again", secondBatch)
        .exitedWith(2, cannotBeReadAgain(second.folder(), "overhauls.csv has changed"));
    Files.delete(overhauls);
    run("ingest", "--again", secondBatch)
        .exitedWith(2, cannotBeReadAgain(second.folder(), "overhauls.csv is missing"));

    Path moved = new SmallInbox(folder.resolve("moved")).with("overhauls.csv", BREAKDOWN).folder();
    assertEquals(0, run("ingest", "--again", secondBatch, "--inbox", moved).exit());
  }

  private String cannotBeReadAgain(Path inbox, String why) {
    return "The batch %s cannot be read again from %s: %s. Put the files back as they were, or name their folder as the inbox."
        .formatted(secondBatch, inbox, why);
  }

  private Ran run(String command, Object... more) {
    return month.run(command, more);
  }

  private JsonNode ingest(SmallInbox inbox) {
    return month.ingest(inbox);
  }

  private List<String> published(String out, Object... knownAt) {
    return month.published(out, knownAt);
  }

  private static List<String> column(List<String> figures, String name) {
    return PublishedMonth.column(figures, name);
  }

  private String firstBatch() {
    return month.cell("before", "intake_log", "batch");
  }

  private String knownAt() {
    return month.cell("before", "intake_log", "known_at");
  }
}
