package leadline.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadline.settings.Step;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Summary tables to files. */
@Command(
    name = "publish",
    description = {
      "Writes a month's tables as CSV and Parquet, with a data package and the run's manifest,",
      "into DIR/MONTH, and prints the month in words. Takes the newest run unless one is named;",
      "a run that knew less than the newest goes to a folder of its own."
    },
    mixinStandardHelpOptions = true,
    footerHeading = "%nExamples:%n",
    footer = {
      "  leadline publish --lake lake --month 2026-10 --out reports",
      "  leadline publish --lake lake --month 2026-10 --out reports \\",
      "    --known-at 2026-11-05T06:00:00Z"
    })
final class PublishCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;
  @Mixin private LakeOption lake;
  @Mixin private MonthOption month;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder in which the month's own folder is made.")
  private Path out;

  @ArgGroup private @Nullable Choice choice;

  /** Which run, where not the newest. */
  static final class Choice {
    @Option(
        names = "--known-at",
        paramLabel = "TIME",
        converter = MomentConverter.class,
        description = "The newest run on what was known then.")
    private @Nullable Instant knownAt;

    @Option(names = "--run", paramLabel = "RUN", description = "The run of this name.")
    private @Nullable String run;
  }

  @Override
  public Integer call() {
    return lake.run(
            leadline,
            new Step.Publish(
                month.ended(leadline.surroundings.clock()), out.toAbsolutePath(), runChoice()))
        .number();
  }

  private Step.RunChoice runChoice() {
    Optional<Choice> chosen = Optional.ofNullable(choice);
    return chosen
        .flatMap(given -> Optional.ofNullable(given.run))
        .<Step.RunChoice>map(Step.RunChoice.Named::new)
        .or(
            () ->
                chosen
                    .flatMap(given -> Optional.ofNullable(given.knownAt))
                    .map(Step.RunChoice.KnownAt::new))
        .orElseGet(Step.RunChoice.Newest::new);
  }
}
