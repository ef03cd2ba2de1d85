package leadline.cli;

import leadline.job.ProgramVersion;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program as a whole. */
@Command(
    name = "leadline",
    description = {
      "From the overhaul and running-hour records of a fleet to rates, intervals and"
          + " part lives, each with its uncertainty."
    },
    versionProvider = LeadlineCommand.Version.class,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      RunCommand.class,
      IngestCommand.class,
      WithdrawCommand.class,
      ComputeCommand.class,
      PublishCommand.class,
      TidyCommand.class,
      EstimateCommand.class,
      CheckCommand.class,
      SampleCommand.class
    },
    footer = {
      "  leadline run jobs/demo.json         everything, on the sample data",
      "  leadline check --inbox exports      what an ingest would refuse, and why",
      "  leadline COMMAND --help             one command, with examples"
    })
final class LeadlineCommand implements Runnable {

  final Console console;
  final Surroundings surroundings;

  @Spec private CommandSpec spec = CommandSpec.create();

  LeadlineCommand(Console console, Surroundings surroundings) {
    this.console = console;
    this.surroundings = surroundings;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Name a command: " + String.join(", ", spec.subcommands().keySet()) + ".");
  }

  /** The version as the build wrote it. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"leadline " + ProgramVersion.current()};
    }
  }
}
