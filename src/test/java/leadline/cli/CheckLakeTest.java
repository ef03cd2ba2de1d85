package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.SortedMap;
import leadline.golden.Pipeline;
import leadline.lake.DamagedCounts;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lake counted again: exit code 3 and a line for each count that is not what it should be. */
@Tag("long")
class CheckLakeTest {

  private static final String HOURS = SmallInbox.HOURS_HEADER + "plover,ME,2024-02-30,1,counter,\n";

  @TempDir Path folder;

  private Path lake;
  private String batch = "";

  @BeforeEach
  void aLakeWithABatchAndARun() {
    lake = folder.resolve("lake");
    SmallInbox inbox = SmallInbox.in(folder.resolve("inbox")).with("hours_bad.csv", HOURS);
    batch =
        Program.forScheduler()
            .run("ingest", "--inbox", inbox, "--lake", lake, "--json")
            .step()
            .path("batch")
            .asText();
  }

  @Test
  void aSoundLakeIsAgreedWithAndLeftAsItIs() {
    compute();
    SortedMap<String, String> before = FolderTree.of(lake);

    assertEquals(
        lake + ": batches 1, files 3, runs 1, counts that differ 0", lastLine(check().clean()));
    assertEquals(before, FolderTree.of(lake));
  }

  @Test
  void theGoldenFleetAgrees() {
    Path golden = folder.resolve("golden");
    new Pipeline(golden).golden(folder.resolve("out"));

    Ran ran = Program.forScheduler().run("check", "--lake", golden).clean();
    assertEquals(golden + ": batches 3, files 19, runs 1, counts that differ 0", lastLine(ran));
  }

  @Test
  void aStoredRowThatIsGoneIsMissed() {
    DamagedCounts.loseRow(lake, "records", "hours");

    assertDiffers(
        "batch %s, file hours.csv, table records.hours: rows by the batch's account 3, found 2; "
            + MEND_THE_LAKE);
  }

  @Test
  void aStoredRowTwiceIsSeen() {
    DamagedCounts.doubleRow(lake, "records", "machines");

    assertDiffers(
        "batch %s, file machines.csv, table records.machines: rows by the batch's account 1, found 2; "
            + MEND_THE_LAKE);
  }

  @Test
  void aRefusedRowTwiceIsSeen() {
    DamagedCounts.doubleRow(lake, "records", "refused");

    assertDiffers(
        "batch %s, file hours_bad.csv, table records.refused: rows by the batch's account 1, found 2; "
            + MEND_THE_LAKE);
  }

  @Test
  void aBatchThatTellsOfMoreRowsIsNotBelieved() {
    DamagedCounts.tellOfOneRowMore(lake);

    assertDiffers(
        "batch %s, file hours.csv, table records.hours: rows by the batch's account 4, found 3; "
            + MEND_THE_LAKE);
  }

  @Test
  void aResultRowThatIsGoneIsMissed() {
    Ran computed = compute();
    DamagedCounts.loseRow(lake, "results", "intake_log");

    assertDiffers(
        "run "
            + computed.step().path("run").asText()
            + ", table results.intake_log: rows by the run's account 3, found 2; do not publish the"
            + " run: compute 2024-03 again, with --known-at "
            + computed.step().path("known_at").asText()
            + ".");
  }

  @Test
  void withoutALakeThereIsNothingToCount() {
    Path nowhere = folder.resolve("nowhere");

    Program.forScheduler()
        .run("check", "--lake", nowhere)
        .exitedWith(2, "There is no lake in " + nowhere + ": `ingest` makes one.");
  }

  private static final String MEND_THE_LAKE =
      "compute nothing from this lake: bring it back from a backup, or ingest its exports into a"
          + " new one.";

  private void assertDiffers(String line) {
    Ran ran = check().exitedWith(3);
    assertEquals(line.formatted(batch), ran.out().lines().skip(1).findFirst().orElseThrow());
    assertEquals(3, ran.out().lines().count(), ran.out());
    assertEquals(true, lastLine(ran).endsWith(", counts that differ 1"), ran.out());
  }

  private Ran check() {
    return Program.forScheduler().run("check", "--lake", lake);
  }

  private Ran compute() {
    return Program.forScheduler()
        .run("compute", "--lake", lake, "--month", "2024-03", "--json")
        .clean();
  }

  private static String lastLine(Ran ran) {
    return ran.out().lines().reduce("", (before, line) -> line);
  }
}
