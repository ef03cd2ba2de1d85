package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.fleet.ItemExchange;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobFileTest {

  @TempDir Path folder;

  @Test
  void everySettingHasItsMeaning() {
    Job job = Fixtures.job(Fixtures.FOLDER.resolve("job-good.json"), Map.of());

    Path here = Fixtures.FOLDER.toAbsolutePath();
    assertEquals(here.resolve("the lake"), job.lake());
    assertEquals(RunningHours.ofHours(48), job.hoursTolerance());
    assertEquals(
        ItemExchange.among(
            List.of(
                List.of("marrowgull", "ospreykite"),
                List.of("hesper-lark", "mallow-tern", "tansy-petrel"))),
        job.exchange());
    assertEquals(Duration.ZERO, job.lockWait());
    assertEquals(
        List.of(
            new Step.Ingest(here.resolve("from the ships/inbox")),
            new Step.Compute(
                ReportMonth.parse("2024-12"), Optional.of(Instant.parse("2025-01-15T06:00:00Z"))),
            new Step.Publish(
                ReportMonth.parse("2025-01"),
                here.resolveSibling("published"),
                new Step.RunChoice.Newest()),
            new Step.Withdraw("20250103T020000Z-1f0c3a9e"),
            new Step.ReadAgain("20250104T020000Z-2a1d4b8f", Optional.empty()),
            new Step.ReadAgain("20250105T020000Z-3b2e5c7a", Optional.of(here.resolve("elsewhere"))),
            new Step.Tidy(
                Duration.ofHours(36),
                3,
                List.of(here.resolveSibling("published"), here.resolve("of old"))),
            new Step.Tidy(Duration.ofDays(7), 1, List.of())),
        job.steps());
  }

  @Test
  void aJobsPolicyIntervalReplacesTheCataloguesAndNothingElse() {
    Component ofCatalogue =
        CatalogueFile.read(Fixtures.FOLDER.resolve("catalogue-good.json"), Fixtures.SHARED)
            .components()
            .get(0);
    Component ofJob =
        Fixtures.job(Fixtures.FOLDER.resolve("job-good.json"), Map.of())
            .catalogue()
            .components()
            .get(0);

    assertEquals(RunningHours.ofHours(7500), ofCatalogue.interval());
    assertEquals(RunningHours.ofHours(6000), ofJob.interval());
    assertEquals(ofCatalogue.parts(), ofJob.parts());
    assertEquals(ofCatalogue.machineKinds(), ofJob.machineKinds());
  }

  @Test
  void whatAJobLeavesOutIsTheProgramsOwn() throws IOException {
    Job job =
        Fixtures.job(
            write("{\"lake\": \"lake\", \"steps\": [{\"step\": \"ingest\", \"inbox\": \"in\"}]}"),
            Map.of());

    assertEquals(Job.DEFAULT_HOURS_TOLERANCE, job.hoursTolerance());
    assertEquals(ItemExchange.NONE, job.exchange());
    assertEquals(Job.DEFAULT_LOCK_WAIT, job.lockWait());
    assertEquals(CatalogueFile.read(Fixtures.SHARED.catalogue(), Fixtures.SHARED), job.catalogue());
  }

  @Test
  void pathsAreRelativeToTheJobFileWhateverBlanksTheyHold() throws IOException {
    Path file = Files.createDirectories(folder.resolve("jobs of the office")).resolve("a job.json");
    Files.writeString(
        file,
        """
        {"lake": "../the lake/of ours", "steps": [{"step": "ingest", "inbox": "${INBOX}"}]}
        """);
    Path elsewhere = folder.resolve("in box").toAbsolutePath();

    Job job = Fixtures.job(file, Map.of("INBOX", elsewhere.toString()));

    assertEquals(folder.toAbsolutePath().resolve("the lake/of ours"), job.lake());
    assertEquals(List.of(new Step.Ingest(elsewhere)), job.steps());
  }

  @Test
  void aMonthIsWholeFromTheMomentItEnds() throws IOException {
    Path file =
        write("{\"lake\": \"lake\", \"steps\": [{\"step\": \"compute\", \"month\": \"2025-01\"}]}");

    Job job = JobFile.read(file, Map.of(), Fixtures.SHARED, Instant.parse("2025-02-01T00:00:00Z"));

    assertEquals(
        List.of(new Step.Compute(ReportMonth.parse("2025-01"), Optional.empty())), job.steps());
  }

  private Path write(String text) throws IOException {
    return Files.writeString(folder.resolve("job.json"), text);
  }
}
