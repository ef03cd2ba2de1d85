package leadline.quantity;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
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

  /** The last day that had ended by then. */
  public static LocalDate lastWholeDayBy(Instant moment) {
    return LocalDateTime.ofInstant(moment, ZoneOffset.UTC).toLocalDate().minusDays(1);
  }

  /** The moment as a record writes it: the date of the day that it ends, else date and time. */
  public static String asWritten(Instant moment) {
    LocalDateTime time = LocalDateTime.ofInstant(moment, ZoneOffset.UTC);
    return time.toLocalTime().equals(LocalTime.MIDNIGHT)
        ? time.toLocalDate().minusDays(1).toString()
        : moment.toString();
  }
}
