package leadline.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import leadline.settings.Step;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Exports into the lake. */
@Command(
    name = "ingest",
    description = {
      "Takes the exports of an inbox into the lake as one batch.",
      "",
      "Makes the lake if there is none. A file whose content the lake already has is passed over;"
          + " a row that breaks a rule is kept aside with the reason; a file that cannot be read is"
          + " named, and the others are taken in."
    },
    footer = {
      "  leadline ingest --inbox exports/2026-10 --lake lake",
      "  leadline ingest --inbox exports/2026-10 --lake lake --wait 600 --json"
    })
final class IngestCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Option(
      names = "--inbox",
      required = true,
      paramLabel = "DIR",
      description = "The folder of exports, with its subfolders.")
  private Path inbox;

  @Mixin private LakeOption lake;
  @Mixin private WaitOption wait;

  @Override
  public Integer call() {
    return lake.run(leadline, new Step.Ingest(inbox.toAbsolutePath()), wait.patience()).number();
  }
}
