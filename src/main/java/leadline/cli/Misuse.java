package leadline.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Says in two lines what is wrong with a command line and where its help is. */
final class Misuse implements CommandLine.IParameterExceptionHandler {

  private final Console console;

  Misuse(Console console) {
    this.console = console;
  }

  @Override
  public int handleParseException(ParameterException misuse, String[] arguments) {
    CommandLine misused = misusedBy(misuse.getCommandLine());
    List<String> unmatched = misused.getUnmatchedArguments();
    console.warn(
        unmatched.isEmpty()
            ? String.valueOf(misuse.getMessage())
            : notUnderstood(unmatched.get(0), misused));
    console.warn("Try '" + misused.getCommandSpec().qualifiedName() + " --help'.");
    return ExitCode.UNUSABLE_INPUT.number();
  }

  /** What is not understood comes before what is missing, and before the command it stands. */
  private static CommandLine misusedBy(CommandLine command) {
    CommandLine program = command.getParent();
    return program == null || program.getUnmatchedArguments().isEmpty() ? command : program;
  }

  private static String notUnderstood(String argument, CommandLine command) {
    String kind = command.getSubcommands().isEmpty() ? "use here for" : "command";
    return "There is no %s '%s'.".formatted(argument.startsWith("-") ? "option" : kind, argument);
  }
}
