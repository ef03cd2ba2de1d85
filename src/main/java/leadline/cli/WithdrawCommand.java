package leadline.cli;

import java.util.concurrent.Callable;
import leadline.settings.Step;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A batch out of the count. */
@Command(
    name = "withdraw",
    description = {
      "Takes back a batch that should not have been ingested.",
      "",
      "From now on its rows count nowhere, as if they had never come; the table intake_log still"
          + " names its files. What was known before comes out again with --known-at. Nothing is"
          + " deleted, and no published folder changes. Its files may be ingested again; a file"
          + " that other inboxes held too was passed over there, so ingest one of those again."
    },
    footer = {
      "  leadline withdraw 20261103T020000Z-1f0c3a9e --lake lake",
      "  leadline withdraw 20261103T020000Z-1f0c3a9e --lake lake --json"
    })
final class WithdrawCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Parameters(
      paramLabel = "BATCH",
      description = "The batch, as `ingest` and the table intake_log name it.")
  private String batch;

  @Mixin private LakeOption lake;
  @Mixin private WaitOption wait;

  @Override
  public Integer call() {
    return lake.run(leadline, new Step.Withdraw(batch), wait.patience()).number();
  }
}
