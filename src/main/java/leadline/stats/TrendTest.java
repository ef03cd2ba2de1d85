package leadline.stats;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Tests whether recurrent events of one or several units crowd together as time goes on, or thin
 * out, against a constant rate, which may differ from unit to unit: each unit's times are judged
 * within its own observation.
 *
 * @param units at least one
 * @param truncation what ended their observation
 */
public record TrendTest(List<EventHistory> units, Truncation truncation) {

  /**
   * @throws IllegalArgumentException if there is no unit
   */
  public TrendTest {
    units = List.copyOf(units);
    if (units.isEmpty()) {
      throw new IllegalArgumentException("no unit");
    }
  }

  /** The events whose times the tests use: all but those that ended observation. */
  public int events() {
    return units.stream().map(truncation::telling).mapToInt(Collection::size).sum();
  }

  /**
   * Laplace's test: positive when events come late in the time observed (deterioration), negative
   * when early (improvement); nearly normal from about 4 events on. The sum over units of events
   * less the middle of observation, divided by its standard deviation. Empty without an event.
   * Source: Cox and Lewis 1966, The Statistical Analysis of Series of Events, section 3.3;
   * NIST/SEMATECH e-Handbook 8.2.3.4.
   */
  public Optional<NormalStatistic> laplace() {
    double sum = 0;
    double variance = 0;
    for (EventHistory unit : units) {
      double length = unit.end() - unit.start();
      for (double event : truncation.telling(unit)) {
        sum += event - unit.start() - length / 2;
        variance += length * length / 12;
      }
    }
    return variance > 0
        ? Optional.of(new NormalStatistic(sum / Math.sqrt(variance)))
        : Optional.empty();
  }

  /**
   * The test of the military handbook: twice the sum of ln(T / t) over events t of units observed
   * up to T, exactly chi-squared with two degrees of freedom for each event. A small lower tail
   * tells deterioration, a small upper tail improvement. Empty without an event, or where a unit
   * was not observed from 0 on. Source: MIL-HDBK-189 1981, appendix C; NIST/SEMATECH e-Handbook
   * 8.2.3.4.
   */
  public Optional<ChiSquared> militaryHandbook() {
    if (events() == 0 || units.stream().anyMatch(unit -> unit.start() > 0)) {
      return Optional.empty();
    }
    double sum = 0;
    for (EventHistory unit : units) {
      for (double event : truncation.telling(unit)) {
        sum += Math.log(unit.end() / event);
      }
    }
    return Optional.of(new ChiSquared(2 * sum, 2 * events()));
  }

  /** The test of reverse arrangements, on the times between events of each unit. */
  public ReverseArrangements reverseArrangements() {
    return ReverseArrangements.of(units);
  }
}
