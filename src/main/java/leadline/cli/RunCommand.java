package leadline.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import leadline.settings.JobFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** The steps of a job file. */
@Command(
    name = "run",
    description = {
      "Runs the steps of a job file in order: what a scheduler calls.",
      "",
      "A step is ingest, withdraw, compute, publish or tidy, and does what the command of its name"
          + " does; shared/schemas/job.schema.json says what each takes.",
      "",
      "When all steps are done, the last line on standard output is one JSON object with what each"
          + " of them did. A step that fails ends the job; what was done before it stays done, and"
          + " running the job again repeats no ingest. A batch is withdrawn or read again once only:"
          + " a job that did so is refused when run again."
    },
    footer = {
      "  leadline run jobs/demo.json",
      "  export LEADLINE_LAKE=lake LEADLINE_INBOX=exports LEADLINE_OUT=reports",
      "  leadline run jobs/monthly.json"
    })
final class RunCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Parameters(
      paramLabel = "JOBFILE",
      description = "A job file, JSON; its paths are relative to it.")
  private Path jobFile;

  @Override
  public Integer call() {
    Surroundings around = leadline.surroundings;
    Steps steps =
        new Steps(
            leadline,
            JobFile.read(jobFile, around.environment(), around.shared(), around.clock().instant()));
    return steps.inWordsThenJson().number();
  }
}
