package leadline.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import leadline.settings.CatalogueFile;
import leadline.settings.JobFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Settings and an inbox, looked at without writing. */
@Command(
    name = "check",
    description = {
      "Checks the catalogue, job files and an inbox without writing anything: every fault with",
      "its file, line and column, and what to do."
    },
    mixinStandardHelpOptions = true,
    footerHeading = "%nExamples:%n",
    footer = {"  leadline check jobs/monthly.json", "  leadline check --inbox exports/2026-10"})
final class CheckCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Parameters(paramLabel = "JOBFILE", description = "Job files to check.", arity = "0..*")
  private List<Path> jobFiles = new ArrayList<>();

  @Option(names = "--inbox", paramLabel = "DIR", description = "A folder of exports to check.")
  private @Nullable Path inbox;

  @Override
  public Integer call() {
    Surroundings around = leadline.surroundings;
    for (Path jobFile : jobFiles) {
      JobFile.read(jobFile, around.environment(), around.shared(), around.clock().instant());
      leadline.console.out().println(jobFile + ": as it should be");
    }
    InboxCheck check =
        new InboxCheck(
            leadline.console,
            CatalogueFile.read(around.shared().catalogue(), around.shared()),
            around.clock().instant());
    try {
      return (inbox == null ? ExitCode.DONE : check.of(inbox)).number();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the inbox " + inbox, e);
    }
  }
}
