package leadline.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import leadline.estimate.DataFile;
import leadline.estimate.EstimateSettings;
import leadline.estimate.Methods;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** One estimator on a file of data. */
@Command(
    name = "estimate",
    description = {
      "Runs one estimator on a CSV file and prints its results as one JSON object.",
      "A column 'set' parts the file into several; a column 'group' gives results of each",
      "group, unless the method compares them."
    },
    mixinStandardHelpOptions = true,
    sortOptions = false,
    modelTransformer = SettingOptions.class,
    footerHeading = "%n",
    footer = {
      "Examples:",
      "  leadline estimate kaplan-meier lives.csv --conf 0.9",
      "  leadline estimate rate counts.csv --settings settings.json"
    })
final class EstimateCommand implements Callable<Integer> {

  @ParentCommand private LeadlineCommand leadline;

  @Parameters(paramLabel = "METHOD", description = "The estimator, one of those below.")
  private String method;

  @Parameters(paramLabel = "FILE", description = "The data, a CSV file with a header line.")
  private Path file;

  @Option(
      names = "--settings",
      paramLabel = "FILE",
      description = "A JSON object of settings; the options below stand above it.")
  private @Nullable Path settingsFile;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    EstimateSettings settings =
        settingsFile == null ? EstimateSettings.none() : EstimateSettings.read(settingsFile);
    settings = SettingOptions.over(settings, spec.commandLine().getParseResult());
    leadline.console.out().println(Methods.run(method, DataFile.read(file), settings).json());
    return ExitCode.DONE.number();
  }
}
