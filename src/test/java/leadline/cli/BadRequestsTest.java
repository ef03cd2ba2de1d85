package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is asked for and cannot be had: one sentence with what to do, and exit code 2. */
class BadRequestsTest {

  private static final Program PROGRAM = Program.forScheduler();

  @TempDir static Path folder;

  private static Path lake;
  private static SmallInbox inbox;

  @BeforeAll
  static void aLakeWithOneMonth() {
    inbox = SmallInbox.in(folder.resolve("inbox"));
    lake = folder.resolve("lake");
    PROGRAM.run("ingest", "--inbox", inbox, "--lake", lake).clean();
    PROGRAM.run("compute", "--lake", lake, "--month", "2024-03").clean();
  }

  @Test
  void aMonthWithoutData() {
    PROGRAM
        .run("compute", "--lake", lake, "--month", "2014-03")
        .exitedWith(
            2,
            "No machine was observed by the end of 2014-03: name a later month, or ingest the"
                + " machines and hours that are missing.");
  }

  @Test
  void aLakeWithoutRecords() {
    Path empty = folder.resolve("empty lake");
    Path nothing = SmallInbox.in(folder.resolve("nothing")).with("hours.csv", "").folder();
    assertTrue(nothing.resolve("machines.csv").toFile().delete());
    Ran ran = PROGRAM.run("ingest", "--inbox", nothing, "--lake", empty);

    assertEquals(2, ran.exit());
    assertEquals("Nothing new in " + nothing + "; unusable: 1 file.\n", ran.out());
    PROGRAM
        .run("compute", "--lake", empty, "--month", "2024-03")
        .exitedWith(2, "The lake holds no batch yet: ingest exports first.");
  }

  @Test
  void knownBeforeAnythingWas() {
    PROGRAM
        .run("compute", "--lake", lake, "--month", "2024-03", "--known-at", "2024-04-01T00:00Z")
        .exitedWith(2, "No batch was committed by 2024-04-01T00:00:00Z: name a later moment.");
  }

  @Test
  void aMonthThatWasNotComputed() {
    SortedMap<String, String> before = FolderTree.of(lake.resolve("tables"));

    publish("--month", "2024-02")
        .exitedWith(2, "The lake has no run of 2024-02: compute the month first.");
    assertFalse(Files.exists(folder.resolve("out")));
    assertEquals(before, FolderTree.of(lake.resolve("tables")));
  }

  @Test
  void aMonthThatWasNotComputedOnWhatWasKnownThen() {
    publish("--month", "2024-03", "--known-at", "2024-04-01T00:00Z")
        .exitedWith(
            2,
            "The lake has no run of 2024-03 on what was known then: compute the month with"
                + " --known-at first.");
  }

  @Test
  void aRunThatIsNotThere() {
    Ran ran = publish("--month", "2024-03", "--run", "20240101T000000Z-00000000");

    assertEquals(2, ran.exit());
    assertTrue(
        ran.err()
            .matches(
                "The lake has no run 20240101T000000Z-00000000 of 2024-03: name one of"
                    + " 20250201T[0-9]{6}Z-[0-9a-f]{8}\\.\n"),
        ran.err());
  }

  @Test
  void aPlaceBelowAFile() {
    Path below = inbox.folder().resolve("hours.csv/out");

    PROGRAM
        .run("publish", "--lake", lake, "--month", "2024-03", "--out", below)
        .exitedWith(2, "Cannot publish into " + below + ": " + below + ": Not a directory.");
  }

  @Test
  void aPlaceWhereTheMonthIsSomethingElse() throws IOException {
    Path out = Files.createDirectories(folder.resolve("taken"));
    Files.writeString(out.resolve("2024-03"), "something else");

    PROGRAM
        .run("publish", "--lake", lake, "--month", "2024-03", "--out", out)
        .exitedWith(
            2,
            "Cannot publish into "
                + out
                + ": "
                + out.resolve("2024-03")
                + ": is no link of a publication; move it away and publish again.");
  }

  @Test
  void whatTheFileSystemSaysIsSaidInWords() throws IOException {
    Path out = Files.createDirectories(folder.resolve("odd"));
    Files.writeString(out.resolve(".runs"), "a file");

    PROGRAM
        .run("publish", "--lake", lake, "--month", "2024-03", "--out", out)
        .exitedWith(
            2,
            "Cannot publish into "
                + out
                + ": "
                + out.resolve(".runs")
                + ": something else is in its place.");
  }

  @Test
  void everythingWrongWithAJobFileIsSaidAtOnceWithItsPath() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("job.json"),
            """
            {
              "lake": "${NOWHERE}",
              "lock_wait_s": -1,
              "steps": [
                { "step": "ingest" },
                { "step": "compute", "month": "2025-02" },
                { "step": "send", "to": "the office" }
              ]
            }
            """);
    Ran ran = PROGRAM.run("run", job);

    assertEquals(2, ran.exit());
    assertEquals("", ran.out());
    assertEquals(
        "[$.lake, $.lock_wait_s, $.steps[0].inbox, $.steps[1].month, $.steps[2].step]",
        ran.errorLines().stream()
            .map(line -> line.replace(job + ": ", "").replaceAll(": .*", ""))
            .sorted()
            .toList()
            .toString(),
        ran.err());
  }

  @Test
  void aJobFileThatIsNotThere() {
    Path nowhere = folder.resolve("no job.json");

    PROGRAM.run("run", nowhere).exitedWith(2, nowhere + ": $: there is no such file");
  }

  @Test
  void aStepThatFailsEndsTheJobAndLeavesWhatWasDone() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("half.json"),
            """
            {
              "lake": "half",
              "steps": [
                { "step": "ingest", "inbox": "inbox" },
                { "step": "compute", "month": "2014-03" },
                { "step": "publish", "month": "2014-03", "out": "half-out" }
              ]
            }
            """);
    Ran ran = PROGRAM.run("run", job);

    assertEquals(2, ran.exit());
    assertEquals(1, ran.errorLines().size());
    assertTrue(ran.err().startsWith("No machine was observed by the end of 2014-03"));
    assertTrue(ran.out().startsWith("Ingested 2 files of " + inbox));
    assertFalse(Files.exists(folder.resolve("half-out")));
    PROGRAM.run("compute", "--lake", folder.resolve("half"), "--month", "2024-03").clean();
  }

  private static Ran publish(Object... options) {
    Object[] arguments = new Object[options.length + 5];
    Object[] common = {"publish", "--lake", lake, "--out", folder.resolve("out")};
    System.arraycopy(common, 0, arguments, 0, common.length);
    System.arraycopy(options, 0, arguments, common.length, options.length);
    return PROGRAM.run(arguments);
  }
}
