package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * While another process writes to the lake: exit code 75, which schedulers know as "try again
 * later" (EX_TEMPFAIL of sysexits.h, BSD).
 */
@Tag("long")
class LakeInUseTest {

  @TempDir Path folder;

  private SmallInbox inbox;
  private Path lake;

  @BeforeEach
  void aLake() {
    inbox = SmallInbox.in(folder.resolve("inbox"));
    lake = folder.resolve("lake");
    Program.forScheduler().run("ingest", "--inbox", inbox, "--lake", lake).clean();
  }

  @Test
  void aSecondWriterThatDoesNotWaitIsSentAway() throws IOException {
    LockHolder.whileHeld(
        lake,
        () -> {
          Program.forScheduler()
              .run("compute", "--lake", lake, "--month", "2024-03", "--wait", "0")
              .exitedWith(75, inUse());
          Program.forScheduler()
              .run("ingest", "--inbox", inbox, "--lake", lake, "--wait", "0")
              .exitedWith(75, inUse());
          Program.forScheduler().run("tidy", "--lake", lake, "--wait", "0").exitedWith(75, inUse());
        });
    Program.forScheduler()
        .run("compute", "--lake", lake, "--month", "2024-03", "--wait", "0")
        .clean();
  }

  @Test
  void aJobWaitsAsLongAsItsFileSays() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("job.json"),
            "{\"lake\": \"lake\", \"lock_wait_s\": 0,"
                + " \"steps\": [{\"step\": \"ingest\", \"inbox\": \"inbox\"}]}");
    LockHolder.whileHeld(
        lake,
        () -> {
          Program.forScheduler().run("run", job).exitedWith(75, inUse());
        });
    Program.forScheduler().run("run", job).clean();
  }

  @Test
  void aWaitIsToldToAPersonAndEndsWithTheOtherWriter() throws IOException {
    LockHolder other = LockHolder.of(lake);
    CompletableFuture<Void> ended =
        CompletableFuture.runAsync(
            other::release, CompletableFuture.delayedExecutor(1, TimeUnit.SECONDS));
    Ran ran =
        Program.forPerson().run("compute", "--lake", lake, "--month", "2024-03", "--wait", "60");
    ended.join();

    assertEquals(0, ran.exit());
    assertEquals(
        List.of("compute 2024-03", "waiting for another job that writes to the lake " + lake),
        ran.errorLines());
  }

  @Test
  void theLockOfAWriterThatIsKilledIsFreeAtOnce() throws IOException {
    LockHolder.of(lake).kill();

    Program.forScheduler()
        .run("compute", "--lake", lake, "--month", "2024-03", "--wait", "0")
        .clean();
  }

  @Test
  void publishingOnlyReadsAndDoesNotWait() throws IOException {
    Program.forScheduler().run("compute", "--lake", lake, "--month", "2024-03").clean();
    LockHolder.whileHeld(
        lake,
        () -> {
          Ran ran =
              Program.forScheduler()
                  .run(
                      "publish",
                      "--lake",
                      lake,
                      "--month",
                      "2024-03",
                      "--out",
                      folder.resolve("out"))
                  .clean();
          assertTrue(ran.out().startsWith("2024-03: "));
        });
  }

  private String inUse() {
    return "Another job is writing to the lake " + lake + ": try again when it has ended.";
  }
}
