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
      "Files that the lake already has are passed over; rows that break a rule are kept aside",
      "with the reason."
    },
    mixinStandardHelpOptions = true,
    footerHeading = "%nExamples:%n",
    footer = {"  leadline ingest --inbox exports/2026-10 --lake lake"})
final class IngestCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;
  @Mixin private LakeOption lake;

  @Option(
      names = "--inbox",
      required = true,
      paramLabel = "DIR",
      description = "The folder of exports, with its subfolders.")
  private Path inbox;

  @Override
  public Integer call() {
    return lake.run(leadline, new Step.Ingest(inbox.toAbsolutePath())).number();
  }
}
