package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Reading;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/**
 * The trusted readings of a counter around one that is not.
 *
 * @param trusted by time
 */
record Surroundings(List<Reading> trusted, Counter counter) {

  /** A date may be off by a day, as at the date line, or bear the year before or after. */
  private static final List<Duration> DATES_OFF =
      List.of(
          Duration.ofDays(-1),
          Duration.ofDays(1),
          Duration.ofDays(-366),
          Duration.ofDays(-365),
          Duration.ofDays(365),
          Duration.ofDays(366));

  /** How far a month's own sum may lie from the counter's: noon to noon, and a day's reading. */
  private static final RunningHours NEAR = RunningHours.ofHours(48);

  /** Why the reading may be as it is, if no slip of a digit is behind it. */
  HourRule explain(Reading reading) {
    if (DATES_OFF.stream().anyMatch(off -> fits(reading, reading.at().plus(off)))) {
      return HourRule.ANOTHER_DAY;
    }
    return isOfItsMonth(reading) ? HourRule.MIXED : HourRule.IMPOSSIBLE;
  }

  /** Whether the figure could have been read at another moment, between the readings there. */
  private boolean fits(Reading reading, Instant moment) {
    Reading moved =
        new Reading(reading.machine(), moment, reading.hours(), reading.kind(), reading.origin());
    return before(moment).filter(other -> follows(other, moved)).isPresent()
        && from(moment).filter(other -> follows(moved, other)).isPresent();
  }

  private boolean follows(Reading one, Reading other) {
    return !one.hours().isAbove(other.hours()) && counter.increment(one, other).isPresent();
  }

  /** Whether it is about what was run since its month began. */
  private boolean isOfItsMonth(Reading reading) {
    YearMonth month = YearMonth.from(reading.at().minusNanos(1).atZone(ZoneOffset.UTC));
    Optional<RunningHours> began = at(Days.startOf(month.atDay(1)));
    Optional<RunningHours> now = at(reading.at());
    return began.isPresent()
        && now.isPresent()
        && !now.get().minus(began.get()).differenceTo(reading.hours()).isAbove(NEAR);
  }

  private Optional<RunningHours> at(Instant moment) {
    Optional<Reading> before = before(moment);
    Optional<Reading> after = from(moment);
    if (after.filter(reading -> reading.at().equals(moment)).isPresent()) {
      return after.map(Reading::hours);
    } else if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    double share =
        (double) Duration.between(before.get().at(), moment).toSeconds()
            / Duration.between(before.get().at(), after.get().at()).toSeconds();
    long run = after.get().hours().minus(before.get().hours()).tenths();
    return Optional.of(before.get().hours().plus(RunningHours.ofTenths(Math.round(share * run))));
  }

  private Optional<Reading> before(Instant moment) {
    int from = indexFrom(moment);
    return from == 0 ? Optional.empty() : Optional.of(trusted.get(from - 1));
  }

  private Optional<Reading> from(Instant moment) {
    int from = indexFrom(moment);
    return from == trusted.size() ? Optional.empty() : Optional.of(trusted.get(from));
  }

  /** The first reading not before the moment, or the number of readings. */
  private int indexFrom(Instant moment) {
    int low = 0;
    int high = trusted.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (trusted.get(middle).at().isBefore(moment)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
