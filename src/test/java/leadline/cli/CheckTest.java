package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckTest {

  private static final Path CATALOGUE = Program.HOME.resolve("shared/catalogue.json");

  @TempDir Path folder;

  @Test
  void nothingIsWritten() throws IOException {
    SmallInbox inbox = SmallInbox.in(folder.resolve("inbox")).with("crew.csv", "a,b\n");
    Path job =
        job("{\"lake\": \"lake\", \"steps\": [{\"step\": \"ingest\", \"inbox\": \"inbox\"}]}");
    SortedMap<String, String> before = FolderTree.of(folder);
    SortedMap<String, String> settings = FolderTree.of(Program.HOME.resolve("shared"));

    Ran ran = Program.forScheduler().run("check", job, "--inbox", inbox);

    assertEquals(2, ran.exit());
    assertEquals(before, FolderTree.of(folder));
    assertEquals(settings, FolderTree.of(Program.HOME.resolve("shared")));
  }

  @Test
  void everyFaultIsSaidWithItsPlace() throws IOException {
    SmallInbox inbox =
        SmallInbox.in(folder.resolve("inbox"))
            .with("hours_bad.csv", SmallInbox.HOURS_HEADER + "plover,ME,2024-02-30,many,counter,\n")
            .with("crew.csv", "a,b\n")
            .with("notes.txt", "none");
    Path bad = job("{\"lake\": 1, \"steps\": [{\"step\": \"ingest\"}]}");
    Path sound = Files.writeString(folder.resolve("sound.json"), Files.readString(demo()));

    Ran ran = Program.forScheduler().run("check", bad, sound, "--inbox", inbox);

    ran.exitedWith(2);
    assertEquals(
        String.join(
            "\n",
            CATALOGUE + ": as it should be",
            bad + ": $.lake: 1 is not allowed here; expected is a path that is not blank",
            bad
                + ": $.steps[0].inbox: the setting `inbox` is missing; expected is the path of the"
                + " folder of exports",
            sound + ": as it should be",
            "crew.csv, line 1: the name does not say what the file holds; begin it with one of"
                + " machines, hours, overhauls, findings, stock, movements, returns, as in"
                + " machines_2024.csv, or take the file away.",
            "notes.txt: not CSV, passed over",
            "hours.csv: rows read 3, would be stored 3, refused 0",
            "hours_bad.csv, line 2, column read_at: read_at \"2024-02-30\" does not exist: February"
                + " 2024 has the days 01 to 29.",
            "hours_bad.csv, line 2, column hours: hours \"many\" is not running hours: write digits"
                + " with a point before the decimals and no sign, thousands separator, unit or"
                + " exponent, as in 8550.5.",
            "hours_bad.csv: rows read 1, would be stored 0, refused 1",
            "machines.csv: rows read 1, would be stored 1, refused 0",
            ""),
        ran.out());
  }

  @Test
  void refusedRowsAloneAreNoFailure() {
    SmallInbox inbox =
        SmallInbox.in(folder.resolve("inbox"))
            .with("hours_bad.csv", SmallInbox.HOURS_HEADER + "plover,ME,2024-02-30,1,counter,\n");

    Program.forScheduler().run("check", "--inbox", inbox).clean();
  }

  @Test
  void theCatalogueIsCheckedAlways() {
    assertEquals(
        CATALOGUE + ": as it should be\n", Program.forScheduler().run("check").clean().out());
  }

  @Test
  void anInboxThatIsNotThereIsOneSentence() {
    Path nowhere = folder.resolve("nowhere");

    Program.forScheduler()
        .run("check", "--inbox", nowhere)
        .exitedWith(
            2, "The inbox folder " + nowhere + " does not exist; create it or name another.");
  }

  @Test
  void theShippedJobsAreAsTheyShouldBe() {
    Ran ran =
        Program.forScheduler(
                Map.of("LEADLINE_LAKE", "a", "LEADLINE_INBOX", "b", "LEADLINE_OUT", "c"))
            .run("check", demo(), Program.HOME.resolve("jobs/monthly.json"))
            .clean();

    assertEquals(3, ran.out().lines().filter(line -> line.endsWith(": as it should be")).count());
    assertTrue(ran.out().contains("monthly.json"));
  }

  private static Path demo() {
    return Program.HOME.resolve("jobs/demo.json");
  }

  private Path job(String text) throws IOException {
    return Files.writeString(folder.resolve("job.json"), text);
  }
}
