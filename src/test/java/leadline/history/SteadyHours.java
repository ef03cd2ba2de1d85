package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/** A machine that runs the same hours every day, of which some rest on a repaired reading. */
public record SteadyHours(long hoursADay, long repairedHoursADay) implements HourSeries {

  @Override
  public Optional<Bounded> at(Instant moment) {
    return Optional.empty();
  }

  @Override
  public Exposure exposure(Period period) {
    long days = Duration.between(period.start(), period.end()).toDays();
    return new Exposure(
        RunningHours.ofHours(days * hoursADay), RunningHours.ofHours(days * repairedHoursADay));
  }
}
