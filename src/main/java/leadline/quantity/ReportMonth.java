package leadline.quantity;

import java.io.Serializable;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;

/** A calendar month of UTC, ending at 24:00 UTC of its last day. */
public record ReportMonth(YearMonth month) implements Comparable<ReportMonth>, Serializable {

  /** Reads {@code 2026-10}. */
  public static ReportMonth parse(String text) {
    try {
      return new ReportMonth(YearMonth.parse(text));
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException("not a month like 2026-10: " + text, e);
    }
  }

  public static ReportMonth lastWholeBefore(Instant now) {
    return new ReportMonth(YearMonth.from(now.atZone(ZoneOffset.UTC)).minusMonths(1));
  }

  public Instant end() {
    return startOf(month.plusMonths(1));
  }

  /** The start of the stretch of so many months that ends with this one. */
  public Instant startOfLast(int months) {
    return startOf(month.plusMonths(1).minusMonths(months));
  }

  private static Instant startOf(YearMonth month) {
    return month.atDay(1).atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  @Override
  public int compareTo(ReportMonth other) {
    return month.compareTo(other.month);
  }

  @Override
  public String toString() {
    return month.toString();
  }
}
