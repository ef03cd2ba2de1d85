package leadline.cli;

import leadline.estimate.UnusableData;
import leadline.intake.InboxUnusable;
import leadline.job.UnusableRequest;
import leadline.lake.LakeException;
import leadline.lake.LakeInUseException;
import leadline.settings.SettingError;
import leadline.settings.SettingsException;
import picocli.CommandLine;

/** Turns what went wrong into words and an exit code. */
final class Faults implements CommandLine.IExecutionExceptionHandler {

  private final Console console;

  Faults(Console console) {
    this.console = console;
  }

  @Override
  public int handleExecutionException(
      Exception fault, CommandLine command, CommandLine.ParseResult parsed) {
    return exitCode(fault).number();
  }

  private ExitCode exitCode(Exception fault) {
    if (fault instanceof SettingsException settings) {
      settings.errors().stream().map(SettingError::toString).forEach(console::warn);
      return ExitCode.UNUSABLE_INPUT;
    } else if (fault instanceof LakeInUseException) {
      console.warn(String.valueOf(fault.getMessage()));
      return ExitCode.TRY_AGAIN;
    } else if (fault instanceof InboxUnusable
        || fault instanceof UnusableData
        || fault instanceof UnusableRequest
        || fault instanceof LakeException) {
      console.warn(String.valueOf(fault.getMessage()));
      return ExitCode.UNUSABLE_INPUT;
    }
    console.warn("This is a fault of the program; please report it with these lines.");
    fault.printStackTrace(console.err());
    return ExitCode.UNEXPECTED;
  }
}
