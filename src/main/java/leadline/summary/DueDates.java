package leadline.summary;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadline.fleet.OverhaulLimit;
import leadline.fleet.Written;
import leadline.history.PositionStanding;

/**
 * When a position falls due: as soon as the hours left have run, at the latest when the months of
 * the calendar's limit have passed. Never {@code early} after {@code due} or {@code due} after
 * {@code late}.
 *
 * @param early at the fastest month's rate, or at 24 h a day where no whole month is on record
 * @param due at the rate of the recent months together
 * @param late at the slowest month's rate
 * @param unknown why there is no {@code due}
 */
record DueDates(
    Optional<Instant> early,
    Optional<Instant> due,
    Optional<Instant> late,
    Optional<WhyUnknown> unknown) {

  private static final double HOURS_A_DAY = 24;

  /** Beyond this many days nothing is forecast. */
  private static final double HORIZON_DAYS = 36_525;

  enum WhyUnknown implements Written {
    OVERDUE,
    SINCE_UNKNOWN,
    NO_WHOLE_MONTH,
    NOT_RUNNING
  }

  static DueDates none(WhyUnknown why) {
    return new DueDates(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(why));
  }

  /**
   * @param hoursLeft at {@code from}, not negative
   * @param calendar the end of the calendar's limit
   */
  static DueDates of(
      double hoursLeft, Instant from, Optional<RecentRunning> running, Optional<Instant> calendar) {
    Optional<Instant> due =
        first(after(hoursLeft, from, rate(running.map(RecentRunning::mean))), calendar);
    return new DueDates(
        first(
            after(
                hoursLeft,
                from,
                OptionalDouble.of(running.map(RecentRunning::fastest).orElse(HOURS_A_DAY))),
            calendar),
        due,
        first(after(hoursLeft, from, rate(running.map(RecentRunning::slowest))), calendar),
        Optional.of(running.isPresent() ? WhyUnknown.NOT_RUNNING : WhyUnknown.NO_WHOLE_MONTH)
            .filter(why -> due.isEmpty()));
  }

  /** The end of the calendar's limit; none where no overhaul is known from which it runs. */
  static Optional<Instant> calendarEnd(PositionStanding standing) {
    return standing
        .component()
        .monthLimit()
        .map(OverhaulLimit::length)
        .filter(months -> standing.since().isKnown())
        .map(
            months ->
                standing.since().at().atOffset(ZoneOffset.UTC).plusMonths(months).toInstant());
  }

  private static OptionalDouble rate(Optional<Double> hoursADay) {
    return hoursADay.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private static Optional<Instant> after(double hours, Instant from, OptionalDouble hoursADay) {
    double days = hours == 0 ? 0 : hours / hoursADay.orElse(0);
    return days <= HORIZON_DAYS
        ? Optional.of(from.plus(Duration.ofSeconds(Math.round(days * 86_400))))
        : Optional.empty();
  }

  private static Optional<Instant> first(Optional<Instant> one, Optional<Instant> other) {
    return Stream.concat(one.stream(), other.stream()).min(Instant::compareTo);
  }
}
