package leadline.summary;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** The columns that say when a position falls due, and from what running. */
public final class DueForecast {

  public static final TableColumn<Double> RATE =
      TableColumn.real(
          "recent_h_per_day",
          "h per day",
          "the machine's running in the whole months, at most 12, before counted_to; empty where"
              + " there is none");
  public static final TableColumn<Double> SLOWEST =
      TableColumn.real(
          "slowest_h_per_day", "h per day", "its running in the slowest of these months");
  public static final TableColumn<Double> FASTEST =
      TableColumn.real(
          "fastest_h_per_day", "h per day", "its running in the fastest of these months");
  public static final TableColumn<String> DUE_EARLY =
      TableColumn.remark(
          "due_early",
          "the day when it falls due at the fastest month's rate, 24 h a day where there is no"
              + " whole month; the limit by the calendar where that comes first");
  public static final TableColumn<String> DUE_ON =
      TableColumn.remark(
          "due_on",
          "the day when it falls due at recent_h_per_day, or by the calendar where that comes"
              + " first; a forecast, not a permission");
  public static final TableColumn<String> DUE_LATE =
      TableColumn.remark(
          "due_late",
          "the same at the slowest month's rate; empty where the machine stood still in it and no"
              + " limit by the calendar is set");
  public static final TableColumn<String> NO_DATE =
      TableColumn.remark(
          "no_date", "why due_on is empty: " + SharedColumns.words(DueDates.WhyUnknown.class));

  static final List<TableColumn<?>> COLUMNS =
      List.of(RATE, SLOWEST, FASTEST, DUE_EARLY, DUE_ON, DUE_LATE, NO_DATE);

  private DueForecast() {}

  static void in(TableRow.Builder row, DueDates dates, Optional<RecentRunning> running) {
    row.with(RATE, running.map(RecentRunning::mean))
        .with(SLOWEST, running.map(RecentRunning::slowest))
        .with(FASTEST, running.map(RecentRunning::fastest))
        .with(DUE_EARLY, dates.early().map(DueForecast::day))
        .with(DUE_ON, dates.due().map(DueForecast::day))
        .with(DUE_LATE, dates.late().map(DueForecast::day))
        .with(NO_DATE, dates.unknown().map(DueDates.WhyUnknown::word));
  }

  /** The day that the moment falls on, or ends. */
  private static String day(Instant moment) {
    return LocalDate.ofInstant(moment.minusNanos(1), ZoneOffset.UTC).toString();
  }
}
