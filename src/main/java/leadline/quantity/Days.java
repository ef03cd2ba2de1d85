package leadline.quantity;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** Dates as moments. A day of the record ends at 24:00 UTC. */
public final class Days {

  private Days() {}

  public static Instant startOf(LocalDate day) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  public static Instant endOf(LocalDate day) {
    return startOf(day.plusDays(1));
  }
}
