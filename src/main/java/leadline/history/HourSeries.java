package leadline.history;

import java.time.Instant;
import java.util.Optional;
import leadline.quantity.RunningHours;

/** Placeholder signature for builders. */
public interface HourSeries {
  Optional<Bounded> at(Instant moment);

  /** Hours run in a period between the first and the last trusted reading. */
  Exposure exposure(leadline.quantity.Period period);

  record Bounded(RunningHours hours, RunningHours lower, RunningHours upper) {}
}
