package leadline.cli;

import java.time.Clock;
import leadline.job.UnusableRequest;
import leadline.quantity.ReportMonth;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The month of a command. */
final class MonthOption {

  @Option(
      names = "--month",
      required = true,
      paramLabel = "MONTH",
      converter = Converter.class,
      description = "A month that has ended, such as 2026-10.")
  private ReportMonth month;

  ReportMonth ended(Clock clock) {
    if (month.end().isAfter(clock.instant())) {
      throw new UnusableRequest(
          "The month "
              + month
              + " has not ended yet: name one up to "
              + ReportMonth.lastWholeBefore(clock.instant())
              + ".");
    }
    return month;
  }

  /** Reads a month. */
  static final class Converter implements ITypeConverter<ReportMonth> {
    @Override
    public ReportMonth convert(String text) {
      try {
        return ReportMonth.parse(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException("'" + text + "' is not a month such as 2026-10");
      }
    }
  }
}
