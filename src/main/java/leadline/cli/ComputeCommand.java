package leadline.cli;

import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadline.settings.Step;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Records to summary tables. */
@Command(
    name = "compute",
    description = {
      "Makes a month's summary tables from the records of the lake.",
      "",
      "Rebuilds machine hours, items and part lives from all records that are known, or that were"
          + " known at a moment, and reports how many problems of each kind it met."
    },
    footer = {
      "  leadline compute --lake lake --month 2026-10",
      "  leadline compute --lake lake --month 2026-10 --known-at 2026-11-05T06:00:00Z"
    })
final class ComputeCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;
  @Mixin private LakeOption lake;
  @Mixin private MonthOption month;

  @Option(
      names = "--known-at",
      paramLabel = "TIME",
      description = "Use what was known then, as 2026-11-05T06:00:00Z.")
  private @Nullable Instant knownAt;

  @Mixin private WaitOption wait;

  @Override
  public Integer call() {
    Step step = new Step.Compute(month.month(), Optional.ofNullable(knownAt));
    return lake.run(leadline, step, wait.patience()).number();
  }
}
