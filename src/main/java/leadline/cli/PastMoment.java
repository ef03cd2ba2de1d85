package leadline.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a moment that has come, with its offset. */
record PastMoment(Clock clock) implements ITypeConverter<Instant> {

  @Override
  public Instant convert(String text) {
    Instant moment = parsed(text);
    if (moment.isAfter(clock.instant())) {
      throw new TypeConversionException(
          "'%s' has not come: name a moment up to now, %s".formatted(text, clock.instant()));
    }
    return moment;
  }

  private static Instant parsed(String text) {
    try {
      return OffsetDateTime.parse(text).toInstant();
    } catch (DateTimeParseException e) {
      throw new TypeConversionException(
          "'" + text + "' is not a moment with its offset, such as 2026-11-05T06:00:00Z");
    }
  }
}
