package leadline.cli;

import leadline.quantity.ReportMonth;
import picocli.CommandLine.Option;

/** The option of the commands that work on a month. */
final class MonthOption {

  @Option(
      names = "--month",
      required = true,
      paramLabel = "MONTH",
      description = "A month that has ended, such as 2026-10.")
  private ReportMonth month;

  ReportMonth month() {
    return month;
  }
}
