package leadline.summary;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Written;
import leadline.history.MachineHistory;
import leadline.history.PositionStanding;
import leadline.history.PositionStanding.ShutPart;
import leadline.quantity.Days;
import leadline.quantity.Period;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import leadline.summary.DueDates.WhyUnknown;

/** How a position stands towards its next overhaul. */
record DuePosition(PositionStanding position, DueDates dates, Standing standing) {

  static final int SOON_DAYS = 90;

  /** The part opened longest ago in the item's hours, one never opened before all others. */
  private static final Comparator<ShutPart> LONGEST_SHUT_LAST =
      Comparator.comparing((ShutPart part) -> part.opened().isEmpty()).thenComparing(ShutPart::run);

  enum Standing implements Written {
    OVERDUE,
    DUE_SOON,
    NOT_DUE,
    UNKNOWN;

    /** The overhaul is to be done now or soon. */
    boolean isComing() {
      return this == OVERDUE || this == DUE_SOON;
    }
  }

  /** Every position of a machine still in the fleet as the month ends. */
  static List<DuePosition> of(MachineHistory history, ReportMonth month) {
    if (history
        .machine()
        .validTo()
        .filter(day -> !Days.endOf(day).isAfter(month.end()))
        .isPresent()) {
      return List.of();
    }
    Optional<RecentRunning> running = RecentRunning.of(history);
    return history.observed().stream()
        .map(Period::end)
        .flatMap(
            end ->
                history.positions().stream()
                    .map(position -> of(position, end, running, month.end())))
        .toList();
  }

  private static DuePosition of(
      PositionStanding position, Instant end, Optional<RecentRunning> running, Instant monthEnd) {
    Optional<Instant> calendar = DueDates.calendarEnd(position);
    RunningHours left = position.component().hourLimit().length().minus(position.run());
    if (left.isNegative() || calendar.filter(monthEnd::isAfter).isPresent()) {
      return new DuePosition(position, DueDates.none(WhyUnknown.OVERDUE), Standing.OVERDUE);
    }
    if (!position.since().isKnown()) {
      return new DuePosition(position, DueDates.none(WhyUnknown.SINCE_UNKNOWN), Standing.UNKNOWN);
    }
    DueDates dates = DueDates.of(left.hours(), end, running, calendar);
    Instant soon = monthEnd.plus(Duration.ofDays(SOON_DAYS));
    return new DuePosition(
        position,
        dates,
        dates.early().filter(date -> !date.isAfter(soon)).isPresent()
            ? Standing.DUE_SOON
            : Standing.NOT_DUE);
  }

  /** Hours left to the limit, negative beyond it; none where the start is unknown. */
  Optional<RunningHours> remaining() {
    return Optional.of(position.component().hourLimit().length().minus(position.run()))
        .filter(left -> position.since().isKnown());
  }

  /** Of the parts that nothing but opening tells of, the one shut longest. */
  Optional<ShutPart> longestShut() {
    return position.shut().stream()
        .reduce((one, other) -> LONGEST_SHUT_LAST.compare(other, one) > 0 ? other : one);
  }
}
