package leadline.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import leadline.settings.ShortTime;
import leadline.settings.Step;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.TypeConversionException;

/** Upkeep of a lake. */
@Command(
    name = "tidy",
    description = {
      "Clears a lake of what nothing needs, and gathers small files.",
      "",
      "Drops the rows of batches and runs that never finished. Takes superseded runs off the list"
          + " of runs: those that a newer run of the same month, known-at and settings has"
          + " replaced; their rows go at a tidy after TIME. Forgets old states of the tables, and"
          + " deletes files that nothing refers to.",
      "",
      "No figure changes: records and batches stay. Whatever a reader that began within TIME has"
          + " met stays too. Published folders are never touched. A tidy that was cut short is"
          + " finished by the next."
    },
    footer = {
      "  leadline tidy --lake lake",
      "  leadline tidy --lake lake --published reports --keep-runs 2 --older-than 30d"
    })
final class TidyCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;
  @Mixin private LakeOption lake;

  @Option(
      names = "--older-than",
      paramLabel = "TIME",
      defaultValue = Step.Tidy.DEFAULT_OLDER_THAN,
      converter = Age.class,
      description =
          "Longer than any reader takes, as 7d, 12h or 30m; ${DEFAULT-VALUE} if not given.")
  private Duration olderThan;

  @Option(
      names = "--keep-runs",
      paramLabel = "N",
      defaultValue = "" + Step.Tidy.DEFAULT_RUNS_KEPT,
      converter = Count.class,
      description =
          "How many of the runs alike in month, known-at and settings to keep, the newest first;"
              + " ${DEFAULT-VALUE} if not given.")
  private int runsKept;

  @Option(
      names = "--published",
      paramLabel = "DIR",
      description =
          "A folder of published months, whose runs are kept as well; as often as wanted.")
  private List<Path> publications = new ArrayList<>();

  @Mixin private WaitOption wait;

  @Override
  public Integer call() {
    Step step =
        new Step.Tidy(
            olderThan, runsKept, publications.stream().map(Path::toAbsolutePath).toList());
    return lake.run(leadline, step, wait.patience()).number();
  }

  /** Reads a number of days, hours or minutes. */
  static final class Age implements ITypeConverter<Duration> {
    @Override
    public Duration convert(String text) {
      if (!ShortTime.isOne(text)) {
        throw new TypeConversionException("'" + text + "' is not a time such as 7d, 12h or 30m");
      }
      return ShortTime.read(text);
    }
  }

  /** Reads a number of runs, at least one. */
  static final class Count implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String text) {
      if (!text.matches("[1-9][0-9]{0,3}")) {
        throw new TypeConversionException("'" + text + "' is not a whole number from 1 to 9999");
      }
      return Integer.valueOf(text);
    }
  }
}
