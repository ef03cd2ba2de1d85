package leadline.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadline.settings.Step;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Exports into the lake. */
@Command(
    name = "ingest",
    description = {
      "Takes the exports of an inbox into the lake as one batch.",
      "",
      "Makes the lake if there is none. A file whose content the lake already has is passed over;"
          + " a row that breaks a rule is kept aside with the reason; a file that cannot be read is"
          + " named, and the others are taken in.",
      "",
      "A file source.json in the inbox folder says whether a record that its exports lack was"
          + " deleted, and which vessels have new identifiers.",
      "",
      "With --again, reads the files of a batch once more, after the program, the catalogue or"
          + " source.json was mended. The new batch takes the old one's place; what was known"
          + " before comes out again with --known-at. The files must lie unchanged in the inbox"
          + " that they came from, or in DIR."
    },
    footer = {
      "  leadline ingest --inbox exports/2026-10 --lake lake",
      "  leadline ingest --inbox exports/2026-10 --lake lake --wait 600 --json",
      "  leadline ingest --again 20261103T020000Z-1f0c3a9e --lake lake"
    })
final class IngestCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Option(
      names = "--inbox",
      paramLabel = "DIR",
      description = "The folder of exports, with its subfolders.")
  private @Nullable Path inbox;

  @Option(
      names = "--again",
      paramLabel = "BATCH",
      description = "Read the files of this batch again, in its place.")
  private @Nullable String again;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private LakeOption lake;
  @Mixin private WaitOption wait;

  @Override
  public Integer call() {
    return lake.run(leadline, step(), wait.patience()).number();
  }

  private Step step() {
    Optional<Path> folder = Optional.ofNullable(inbox).map(Path::toAbsolutePath);
    if (again != null) {
      return new Step.ReadAgain(again, folder);
    }
    return folder
        .map(Step.Ingest::new)
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(), "Missing required option: '--inbox=DIR'"));
  }
}
