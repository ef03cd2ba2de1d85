package leadline.intake;

import java.text.ParsePosition;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.problem.RowFault;
import leadline.problem.TimeFault;
import leadline.quantity.Days;

/**
 * Cells that hold a moment: a date alone, for the end of that day, or a date and time with the
 * offset from UTC.
 */
record MomentCells(Column<Instant> column, DayText days, Instant now) implements CellReader {

  private static final DateTimeFormatter WITHOUT_OFFSET = DateTimeFormatter.ISO_LOCAL_DATE_TIME;

  /**
   * Resolved smartly so that 24:00 is the end of the day; whether the day exists is seen before.
   */
  private static final DateTimeFormatter WITH_OFFSET =
      new DateTimeFormatterBuilder()
          .append(WITHOUT_OFFSET)
          .appendOffset("+HH:mm", "Z")
          .toFormatter(Locale.ROOT)
          .withResolverStyle(ResolverStyle.SMART);

  @Override
  public void read(String text, Cells.Builder row, List<RowFault> faults) {
    if (!DayText.beginsLikeADate(text)) {
      faults.add(new TimeFault.NotAMoment(column.name(), text));
    } else if (text.length() == DayText.LENGTH) {
      days.recordDay(column.name(), text, faults)
          .ifPresent(day -> row.with(column, Days.endOf(day)));
    } else if (DayText.calendarDay(column.name(), text, faults).isPresent()) {
      readWithTime(text, row, faults);
    }
  }

  private void readWithTime(String text, Cells.Builder row, List<RowFault> faults) {
    Instant moment;
    try {
      moment = WITH_OFFSET.parse(text, Instant::from);
    } catch (DateTimeException e) {
      faults.add(unreadable(text));
      return;
    }
    if (moment.isBefore(Days.startOf(days.earliest()))) {
      faults.add(new TimeFault.TooEarly(column.name(), text, days.earliest()));
    } else if (moment.isAfter(now.plus(1, ChronoUnit.DAYS))) {
      faults.add(new TimeFault.InTheFuture(column.name(), text, now));
    } else {
      row.with(column, moment);
    }
  }

  private RowFault unreadable(String text) {
    if (isWritten(WITHOUT_OFFSET, text)) {
      return new TimeFault.MomentWithoutOffset(column.name(), text);
    }
    return isWritten(WITH_OFFSET, text)
        ? new TimeFault.NoSuchTime(column.name(), text)
        : new TimeFault.NotAMoment(column.name(), text);
  }

  /** Whether the text has the format's shape, whatever hours and minutes it names. */
  private static boolean isWritten(DateTimeFormatter format, String text) {
    ParsePosition at = new ParsePosition(0);
    return format.parseUnresolved(text, at) != null && at.getIndex() == text.length();
  }
}
