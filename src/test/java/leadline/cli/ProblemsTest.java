package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows that are well formed and cannot be true: stored, and a problem when they are used. */
class ProblemsTest {

  private static final Program PROGRAM = Program.forScheduler();

  @TempDir Path folder;

  private SmallInbox inbox;
  private Path lake;

  @BeforeEach
  void anInbox() {
    inbox = SmallInbox.in(folder.resolve("inbox"));
    lake = folder.resolve("lake");
  }

  @Test
  void hoursThatFall() {
    inbox.with("hours_more.csv", SmallInbox.HOURS_HEADER + "plover,ME,2024-03-15,1400,counter,\n");

    assertProblem(
        "  1 problem impossible-reading, such as: plover, ME 2024-03-15: The reading of 1400 h is"
            + " left out");
  }

  @Test
  void aMachineThatIsNotRegistered() {
    inbox.with("hours_more.csv", SmallInbox.HOURS_HEADER + "plover,DG1,2024-03-15,1400,counter,\n");

    assertProblem("  1 problem unregistered-machine, such as: plover, DG1: ");
  }

  private void assertProblem(String line) {
    Ran ingested = PROGRAM.run("ingest", "--inbox", inbox, "--lake", lake, "--json").clean();
    assertEquals(SmallInbox.ROWS + 1, ingested.step().get("rows_stored").asInt());

    Ran computed = PROGRAM.run("compute", "--lake", lake, "--month", "2024-03").clean();
    assertEquals(2, computed.out().lines().count(), computed.out());
    assertTrue(computed.out().lines().toList().get(1).startsWith(line), computed.out());

    Ran json = PROGRAM.run("compute", "--lake", lake, "--month", "2024-03", "--json").clean();
    assertEquals(1, json.step().get("problems").size());
    json.step().get("problems").forEach(count -> assertEquals(1, count.asInt()));
  }
}
