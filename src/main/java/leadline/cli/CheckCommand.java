package leadline.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
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
import leadline.settings.SourceFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Settings, an inbox and a lake, looked at without writing. */
@Command(
    name = "check",
    description = {
      "Finds faults in job files, an inbox or a lake, and writes nothing.",
      "",
      "Prints every fault of the catalogue, the job files and the exports with its file, line and"
          + " column, and what to do. Refused rows alone are no failure, as they are none to"
          + " `ingest`.",
      "",
      "Of a lake, counts again the rows of every batch and run, and prints every count that"
          + " differs from what the batch or run itself tells, with what to do; then the exit code"
          + " is 3. This needs the engine's libraries, but does not start the engine."
    },
    footer = {
      "  leadline check jobs/monthly.json",
      "  leadline check --inbox exports/2026-10",
      "  leadline check --lake lake",
      "  leadline check"
    })
final class CheckCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Parameters(paramLabel = "JOBFILE", description = "Job files to check.", arity = "0..*")
  private List<Path> jobFiles = new ArrayList<>();

  @Option(names = "--inbox", paramLabel = "DIR", description = "A folder of exports to check.")
  private @Nullable Path inbox;

  @Option(names = "--lake", paramLabel = "LAKE", description = "A lake to count again.")
  private @Nullable Path lake;

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
      allSound &= sourceIsSound(inbox, shared);
      allSound &= new InboxCheck(leadline.console, catalogue.get(), now).isUsable(inbox);
    }
    boolean countsAgree = lake == null || new LakeCheck(leadline.console).agrees(lake);
    return exitCode(allSound, countsAgree).number();
  }

  private boolean sourceIsSound(Path inbox, SharedFolder shared) {
    return !Files.exists(inbox.resolve(SourceFile.NAME))
        || sound(inbox.resolve(SourceFile.NAME), file -> SourceFile.read(inbox, shared))
            .isPresent();
  }

  private static ExitCode exitCode(boolean allSound, boolean countsAgree) {
    if (!countsAgree) {
      return ExitCode.REFUSED;
    }
    return allSound ? ExitCode.DONE : ExitCode.UNUSABLE_INPUT;
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
