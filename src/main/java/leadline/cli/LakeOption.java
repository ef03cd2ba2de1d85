package leadline.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import leadline.fleet.ItemExchange;
import leadline.settings.CatalogueFile;
import leadline.settings.Job;
import leadline.settings.SharedFolder;
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

  @Option(names = "--json", description = "Write one line of JSON in place of words.")
  private boolean json;

  /** Runs one step on the lake. */
  ExitCode run(LeadlineCommand leadline, Step step, Duration patience) {
    SharedFolder shared = leadline.surroundings.shared();
    Steps steps =
        new Steps(
            leadline,
            new Job(
                lake.toAbsolutePath(),
                CatalogueFile.read(shared.catalogue(), shared),
                Job.DEFAULT_HOURS_TOLERANCE,
                ItemExchange.NONE,
                patience,
                List.of(step)));
    return json ? steps.inJson() : steps.inWords();
  }
}
