package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What `tidy` says it did, to people and to schedulers. */
@Tag("long")
class TidyCommandTest {

  @TempDir Path folder;

  private Path lake;

  @BeforeEach
  void aLakeWithAMonthComputedTwice() {
    lake = folder.resolve("lake");
    Program.forScheduler()
        .run("ingest", "--inbox", SmallInbox.in(folder.resolve("inbox")), "--lake", lake)
        .clean();
    compute();
    compute();
  }

  @Test
  void saysInWordsWhatItDid() {
    Ran ran = tidy().clean();

    assertTrue(
        ran.out()
            .matches("Tidied: 0 rows of .* dropped; \\d+ data files made into \\d+; .*\n(.*\n)"),
        ran.out());
    assertTrue(ran.out().contains("  superseded and off the list: run 20250201T"), ran.out());
    assertEquals(
        "Tidied: 0 rows of unfinished batches and of runs off the list dropped; 0 data files made"
            + " into 0; 0 snapshots expired; 0 files deleted.\n",
        tidy().clean().out());
  }

  @Test
  void saysInJsonWhatItDid() {
    JsonNode step = tidy("--json").clean().step();

    assertEquals("tidy", step.get("step").asText());
    assertEquals(1, step.get("runs_off_the_list").size());
    assertEquals(0, step.get("rows_dropped").asInt());
    assertTrue(step.get("data_files_replaced").asInt() > step.get("data_files_written").asInt());
    assertEquals(0, step.get("snapshots_expired").asInt());
    assertEquals(0, step.get("files_deleted").asInt());
  }

  @Test
  void keepsWhatWasPublished() throws IOException {
    Path out = folder.resolve("out");
    tidy("--published", out)
        .exitedWith(
            2, "No month was published into " + out + ": name a folder that `publish` wrote to.");
    tidy("--keep-runs", "2").clean();
    Program.forScheduler()
        .run("publish", "--lake", lake, "--month", "2024-03", "--out", out)
        .clean();
    Path published = out.resolve("latest").toRealPath().getFileName();
    compute();
    JsonNode off = tidy("--published", out, "--json").clean().step().get("runs_off_the_list");
    assertTrue(off.size() >= 1, off::toString);
    off.forEach(run -> assertNotEquals(published.toString(), run.asText()));
  }

  @Test
  void thereIsNothingToTidyWithoutALake() {
    Path nowhere = folder.resolve("nowhere");
    Program.forScheduler()
        .run("tidy", "--lake", nowhere)
        .exitedWith(2, "There is no lake in " + nowhere + ": `ingest` makes one.");
  }

  private void compute() {
    Program.forScheduler().run("compute", "--lake", lake, "--month", "2024-03").clean();
  }

  private Ran tidy(Object... options) {
    Object[] arguments = new Object[3 + options.length];
    arguments[0] = "tidy";
    arguments[1] = "--lake";
    arguments[2] = lake;
    System.arraycopy(options, 0, arguments, 3, options.length);
    return Program.forScheduler().run(arguments);
  }
}
