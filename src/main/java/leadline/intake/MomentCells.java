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
import java.util.regex.Pattern;
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

  private static final Pattern OFFSET = Pattern.compile("Z|[+-][0-9]{2}(:[0-9]{2})?");

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
    ParsePosition at = new ParsePosition(0);
    if (WITHOUT_OFFSET.parseUnresolved(text, at) == null) {
      return new TimeFault.NotAMoment(column.name(), text);
    }
    String offset = text.substring(at.getIndex());
    if (offset.isEmpty()) {
      return new TimeFault.MomentWithoutOffset(column.name(), text);
    }
    return OFFSET.matcher(offset).matches()
        ? new TimeFault.NoSuchTime(column.name(), text)
        : new TimeFault.NotAMoment(column.name(), text);
  }
}
