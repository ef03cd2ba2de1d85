package leadline.history;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.MachineEntry;
import leadline.quantity.Days;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/**
 * A machine, its hours and the stretch in which it was observed.
 *
 * @param observed none where it was observed for no time before the cut-off
 */
record MachineLog(MachineEntry entry, HourSeries hours, Optional<Period> observed) {

  static MachineLog of(MachineEntry entry, HourSeries hours, Instant cutOff) {
    return new MachineLog(
        entry, hours, hours.span().flatMap(trusted -> observed(entry, trusted, cutOff)));
  }

  /** The hours at a moment of the observed stretch. */
  RunningHours hoursAt(Instant moment) {
    return hours.at(moment).orElseThrow().hours();
  }

  /** The hours at a moment after the start, or at the end of observation if that comes before. */
  RunningHours hoursBy(Instant moment) {
    return hoursAt(moment.isAfter(end()) ? end() : moment);
  }

  /**
   * The age, at the start of observation, of what was on the machine when it was new; none where it
   * was not observed from its first day in service.
   */
  Optional<RunningHours> ageAtStart() {
    return entry
        .newOn()
        .filter(day -> observed.isPresent() && !start().isAfter(Days.endOf(day)))
        .map(day -> hoursAt(start()).minus(hoursAt(hours.span().orElseThrow().start())));
  }

  Instant start() {
    return observed.orElseThrow().start();
  }

  Instant end() {
    return observed.orElseThrow().end();
  }

  private static Optional<Period> observed(MachineEntry entry, Period trusted, Instant cutOff) {
    Instant start =
        Stream.concat(entry.atFirst().recordsFrom().stream(), entry.atFirst().validFrom().stream())
            .map(Days::startOf)
            .reduce(trusted.start(), MachineLog::later);
    Instant end =
        Stream.concat(Stream.of(cutOff), entry.validTo().map(Days::endOf).stream())
            .reduce(trusted.end(), MachineLog::earlier);
    return start.isBefore(end) ? Optional.of(new Period(start, end)) : Optional.empty();
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }

  private static Instant earlier(Instant one, Instant other) {
    return one.isBefore(other) ? one : other;
  }
}
