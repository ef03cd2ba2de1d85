package leadline.intake;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import leadline.problem.RowFault;
import leadline.problem.TimeFault;

/**
 * Reads a date written {@code 2024-03-01} and holds it against the days a record can have. East of
 * the date line it is tomorrow already, so tomorrow is allowed.
 */
final class DayText {

  static final int LENGTH = "2024-03-01".length();

  private final LocalDate earliest;
  private final LocalDate latest;
  private final Instant now;

  DayText(LocalDate earliest, Instant now) {
    this.earliest = earliest;
    this.latest = LocalDate.ofInstant(now, ZoneOffset.UTC).plusDays(1);
    this.now = now;
  }

  LocalDate earliest() {
    return earliest;
  }

  /** Whether the text begins with digits and hyphens as a date does. */
  static boolean beginsLikeADate(String text) {
    if (text.length() < LENGTH) {
      return false;
    }
    for (int at = 0; at < LENGTH; at++) {
      boolean hyphen = at == 4 || at == 7;
      if (hyphen ? text.charAt(at) != '-' : !NumberText.isDigit(text.charAt(at))) {
        return false;
      }
    }
    return true;
  }

  /** The date with which the text begins; nothing, and a fault, where the calendar lacks it. */
  static Optional<LocalDate> calendarDay(String column, String text, List<RowFault> faults) {
    int year = (int) NumberText.digits(text, 0, 4);
    int month = (int) NumberText.digits(text, 5, 7);
    int day = (int) NumberText.digits(text, 8, LENGTH);
    if (month < 1
        || month > 12
        || day < 1
        || (day > 28 && day > YearMonth.of(year, month).lengthOfMonth())) {
      faults.add(new TimeFault.NoSuchDate(column, text, year, month));
      return Optional.empty();
    }
    return Optional.of(LocalDate.of(year, month, day));
  }

  /** The date, if it is within the days a record can have; else nothing, and a fault. */
  Optional<LocalDate> recordDay(String column, String text, List<RowFault> faults) {
    Optional<LocalDate> day = calendarDay(column, text, faults);
    if (day.isEmpty()) {
      return day;
    }
    if (day.get().isBefore(earliest)) {
      faults.add(new TimeFault.TooEarly(column, text, earliest));
      return Optional.empty();
    }
    if (day.get().isAfter(latest)) {
      faults.add(new TimeFault.InTheFuture(column, text, now));
      return Optional.empty();
    }
    return day;
  }
}
