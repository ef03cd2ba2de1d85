package leadline.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.UsageMessageSpec;

/** What the help pages of all commands have in common. */
final class HelpPages {

  private HelpPages() {}

  /** Completes the page of a command and those of the commands below it. */
  static void complete(CommandLine command) {
    UsageMessageSpec page = command.getCommandSpec().usageMessage();
    page.sortOptions(false);
    page.sortSynopsis(false);
    page.parameterListHeading("%nArguments:%n");
    page.optionListHeading("%nOptions:%n");
    page.commandListHeading("%nCommands:%n");
    page.exitCodeListHeading("%nExit codes:%n");
    page.exitCodeList(exitCodes());
    page.footerHeading("%nExamples:%n");
    command.getSubcommands().values().forEach(HelpPages::complete);
  }

  private static Map<String, String> exitCodes() {
    Map<String, String> meanings = new LinkedHashMap<>();
    Arrays.stream(ExitCode.values())
        .forEach(code -> meanings.put(Integer.toString(code.number()), code.meaning()));
    return meanings;
  }
}
