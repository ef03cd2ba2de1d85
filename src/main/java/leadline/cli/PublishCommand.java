package leadline.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import leadline.settings.Job;
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
      "Writes a month's tables into a folder and prints the month in words.",
      "",
      "DIR/MONTH then holds the tables as CSV and Parquet with their data package, and run.json,"
          + " which says what they were made from. Takes the run that knows most, and of those the"
          + " newest. A run that knew less goes to a folder of its own, beside the month's:"
          + " DIR/MONTH-known-at-TIME."
    },
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

  @ArgGroup private Choice choice = new Choice();

  /** Which run; without either, the newest. */
  static final class Choice {
    @Option(
        names = "--known-at",
        paramLabel = "TIME",
        description = "Take the newest run on what was known then.")
    private @Nullable Instant knownAt;

    @Option(
        names = "--run",
        paramLabel = "RUN",
        description = "Take the run of this name, which `compute` gave it.")
    private @Nullable String run;

    private Step.RunChoice run() {
      if (run != null) {
        return new Step.RunChoice.Named(run);
      }
      return knownAt == null ? new Step.RunChoice.Newest() : new Step.RunChoice.KnownAt(knownAt);
    }
  }

  @Override
  public Integer call() {
    Step step = new Step.Publish(month.month(), out.toAbsolutePath(), choice.run());
    return lake.run(leadline, step, Job.DEFAULT_LOCK_WAIT).number();
  }
}
