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
      "Rebuilds machine hours, items and part lives from the records of the lake, and makes the",
      "summary tables of a month from them."
    },
    mixinStandardHelpOptions = true,
    footerHeading = "%nExamples:%n",
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
      converter = MomentConverter.class,
      description = "Use what was known then, such as 2026-11-05T06:00:00Z; else all.")
  private @Nullable Instant knownAt;

  @Override
  public Integer call() {
    return lake.run(
            leadline,
            new Step.Compute(
                month.ended(leadline.surroundings.clock()), Optional.ofNullable(knownAt)))
        .number();
  }
}
