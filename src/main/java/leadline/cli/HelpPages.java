package leadline.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** What the help pages of all commands have in common. */
final class HelpPages {

  private HelpPages() {}

  /** Completes the pages of the program and of its commands. */
  static void complete(CommandLine program) {
    completeOne(program);
    program
        .getCommandSpec()
        .addOption(
            OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("Show the program's version.")
                .build());
    program.getSubcommands().values().forEach(HelpPages::completeOne);
  }

  private static void completeOne(CommandLine command) {
    command
        .getCommandSpec()
        .addOption(
            OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Show this page.")
                .build());
    UsageMessageSpec page = command.getCommandSpec().usageMessage();
    page.sortOptions(false);
    page.sortSynopsis(false);
    page.parameterListHeading("%nArguments:%n");
    page.optionListHeading("%nOptions:%n");
    page.commandListHeading("%nCommands:%n");
    page.exitCodeListHeading("%nExit codes:%n");
    page.exitCodeList(exitCodes());
    page.footerHeading("%nExamples:%n");
  }

  private static Map<String, String> exitCodes() {
    Map<String, String> meanings = new LinkedHashMap<>();
    Arrays.stream(ExitCode.values())
        .forEach(code -> meanings.put(Integer.toString(code.number()), code.meaning()));
    return meanings;
  }
}
