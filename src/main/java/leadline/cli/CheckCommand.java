package leadline.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import leadline.fleet.Catalogue;
import leadline.settings.CatalogueFile;
import leadline.settings.JobFile;
import leadline.settings.SettingsException;
import leadline.settings.SharedFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Settings and an inbox, looked at without writing. */
@Command(
    name = "check",
    description = {
      "Finds faults in job files and in an inbox, and writes nothing.",
      "",
      "Prints every fault of the catalogue, the job files and the exports with its file, line and"
          + " column, and what to do. Refused rows alone are no failure, as they are none to"
          + " `ingest`."
    },
    footer = {
      "  leadline check jobs/monthly.json",
      "  leadline check --inbox exports/2026-10",
      "  leadline check"
    })
final class CheckCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Parameters(paramLabel = "JOBFILE", description = "Job files to check.", arity = "0..*")
  private List<Path> jobFiles = new ArrayList<>();

  @Option(names = "--inbox", paramLabel = "DIR", description = "A folder of exports to check.")
  private @Nullable Path inbox;

  @Override
  public Integer call() throws IOException {
    Surroundings around = leadline.surroundings;
    SharedFolder shared = around.shared();
    Instant now = around.clock().instant();
    Optional<Catalogue> catalogue =
        sound(shared.catalogue(), file -> CatalogueFile.read(file, shared));
    boolean allSound = catalogue.isPresent();
    for (Path jobFile : jobFiles) {
      allSound &=
          sound(jobFile, file -> JobFile.read(file, around.environment(), shared, now)).isPresent();
    }
    if (inbox != null && catalogue.isPresent()) {
      allSound &= new InboxCheck(leadline.console, catalogue.get(), now).isUsable(inbox);
    }
    return (allSound ? ExitCode.DONE : ExitCode.UNUSABLE_INPUT).number();
  }

  /** The settings of a file, unless something is wrong with it; says either. */
  private <T> Optional<T> sound(Path file, Function<Path, T> reader) {
    PrintWriter out = leadline.console.out();
    try {
      T settings = reader.apply(file);
      out.println(file + ": as it should be");
      return Optional.of(settings);
    } catch (SettingsException faults) {
      faults.errors().forEach(out::println);
      return Optional.empty();
    }
  }
}
