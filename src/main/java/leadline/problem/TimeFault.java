package leadline.problem;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Locale;

/** A cell that should hold a date or a moment and does not, or one that cannot be. */
public sealed interface TimeFault extends RowFault {

  /** The offending text. */
  String text();

  /** Not written as year, month and day. */
  record NotADate(String column, String text) implements TimeFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " is not a date: write year, month and day, as in 2024-03-01.";
    }
  }

  /**
   * A date that the calendar does not have.
   *
   * @param text the date, written {@code 2023-02-30}
   */
  record NoSuchDate(String column, String text, int year, int month) implements TimeFault {
    @Override
    public String sentence() {
      return column + " " + Excerpt.of(text) + " does not exist: " + reason() + ".";
    }

    private String reason() {
      if (month < 1 || month > 12) {
        return "months are 01 to 12, and the order is year, month, day";
      }
      YearMonth named = YearMonth.of(year, month);
      return named.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
          + " "
          + year
          + " has the days 01 to "
          + named.lengthOfMonth();
    }
  }

  /** A time of day that no clock shows, or an offset that no place has. */
  record NoSuchTime(String column, String text) implements TimeFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " has a time that no clock shows: hours are 00 to 23, or 24:00 for the end of the day,"
          + " minutes and seconds 00 to 59, the offset at most 18:00, as in"
          + " 2024-03-01T12:00+02:00.";
    }
  }

  /** Neither a date nor a date with a time. */
  record NotAMoment(String column, String text) implements TimeFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " is not a time: write a date, as in 2024-03-01, which means the end of that day, or a"
          + " date and time with the offset from UTC, as in 2024-03-01T12:00Z.";
    }
  }

  /** A time of day that does not say where its clock stood. */
  record MomentWithoutOffset(String column, String text) implements TimeFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " does not give the offset from UTC: add it, as in 2024-03-01T12:00Z or"
          + " 2024-03-01T12:00+02:00, or write the date alone.";
    }
  }

  /** Before any record of a ship in service. */
  record TooEarly(String column, String text, LocalDate earliest) implements TimeFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " is too long ago: write a date from "
          + earliest
          + " on.";
    }
  }

  /**
   * After the intake, with a day's grace for the date line.
   *
   * @param intake when the file was read
   */
  record InTheFuture(String column, String text, Instant intake) implements TimeFault {
    @Override
    public String sentence() {
      return column
          + " "
          + Excerpt.of(text)
          + " lies in the future, as the file was read on "
          + intake.toString().substring(0, "2024-03-01".length())
          + ": write the day on which it happened.";
    }
  }
}
