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
      "The last line on standard output is one JSON object with every step's outcome."
    },
    mixinStandardHelpOptions = true,
    footerHeading = "%nExamples:%n",
    footer = {
      "  leadline run jobs/demo.json",
      "  LEADLINE_LAKE=/srv/lake LEADLINE_INBOX=/srv/exports LEADLINE_OUT=/srv/reports \\",
      "    leadline run jobs/monthly.json"
    })
final class RunCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Parameters(paramLabel = "JOBFILE", description = "A job file, JSON.")
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
