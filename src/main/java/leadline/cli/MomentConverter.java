package leadline.cli;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a moment with its offset. */
final class MomentConverter implements ITypeConverter<Instant> {

  @Override
  public Instant convert(String text) {
    try {
      return OffsetDateTime.parse(text).toInstant();
    } catch (DateTimeParseException e) {
      throw new TypeConversionException(
          "'" + text + "' is not a moment with its offset, such as 2026-11-05T06:00:00Z");
    }
  }
}
