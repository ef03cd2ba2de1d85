package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes that write to one lake at once. */
class WritersIT {

  private static final List<String> INBOXES =
      List.of("1-first-exports", "2-later-exports", "3-resent");

  @TempDir private Path folder;

  private Finished ingest(String inbox) {
    return Program.leadline(
            "ingest",
            "--inbox",
            Build.HOME.resolve("sample-data/golden").resolve(inbox).toString(),
            "--lake",
            folder.resolve("lake").toString(),
            "--wait",
            "250")
        .run();
  }

  @Test
  void oneAfterTheOtherIsTakenInAndNoneIsLost() {
    List<CompletableFuture<Finished>> writers =
        Stream.concat(INBOXES.stream(), INBOXES.stream())
            .map(inbox -> CompletableFuture.supplyAsync(() -> ingest(inbox)))
            .toList();

    for (CompletableFuture<Finished> writer : writers) {
      Finished run = writer.join();
      assertEquals(0, run.exit(), run::toString);
    }
    Finished check = Program.leadline("check", "--lake", folder.resolve("lake").toString()).run();
    assertEquals(0, check.exit(), check::toString);
    assertTrue(check.lastLine().contains("batches 3, files "), check::toString);
    assertTrue(check.lastLine().endsWith("counts that differ 0"), check::toString);
  }
}
