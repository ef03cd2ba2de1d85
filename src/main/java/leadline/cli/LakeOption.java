package leadline.cli;

import java.nio.file.Path;
import java.time.Duration;
import leadline.fleet.Catalogue;
import leadline.settings.CatalogueFile;
import leadline.settings.Job;
import leadline.settings.Step;
import picocli.CommandLine.Option;

/** The options of every command that works on a lake. */
final class LakeOption {

  @Option(
      names = "--lake",
      required = true,
      paramLabel = "LAKE",
      description = "The folder of the lake.")
  private Path lake;

  @Option(
      names = "--wait",
      paramLabel = "SECONDS",
      defaultValue = "60",
      description = "How long to wait for another writer: ${DEFAULT-VALUE} s unless given.")
  private long waitSeconds;

  @Option(names = "--json", description = "One JSON object on standard output, in place of words.")
  private boolean json;

  /** Runs one step on the lake. */
  ExitCode run(LeadlineCommand leadline, Step step) {
    Catalogue catalogue =
        CatalogueFile.read(
            leadline.surroundings.shared().catalogue(), leadline.surroundings.shared());
    Steps steps =
        new Steps(
            leadline,
            new Job(
                lake.toAbsolutePath(),
                catalogue,
                Job.DEFAULT_HOURS_TOLERANCE,
                Duration.ofSeconds(waitSeconds),
                java.util.List.of(step)));
    return json ? steps.inJson() : steps.inWords();
  }
}
