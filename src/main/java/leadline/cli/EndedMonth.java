package leadline.cli;

import java.time.Clock;
import leadline.quantity.ReportMonth;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a month that has ended. */
record EndedMonth(Clock clock) implements ITypeConverter<ReportMonth> {

  @Override
  public ReportMonth convert(String text) {
    ReportMonth month = parsed(text);
    ReportMonth lastWhole = ReportMonth.lastWholeBefore(clock.instant());
    if (month.compareTo(lastWhole) > 0) {
      throw new TypeConversionException(
          "%s has not ended: name a month up to %s".formatted(month, lastWhole));
    }
    return month;
  }

  private static ReportMonth parsed(String text) {
    try {
      return ReportMonth.parse(text);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException("'" + text + "' is not a month such as 2026-10");
    }
  }
}
