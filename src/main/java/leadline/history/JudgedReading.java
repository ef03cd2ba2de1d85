package leadline.history;

import leadline.fleet.Reading;
import leadline.quantity.RunningHours;

/** A reading, and what it is used for. */
sealed interface JudgedReading {

  Reading reading();

  /** Used as it is written. */
  record Trusted(Reading reading) implements JudgedReading {}

  /**
   * Used with the one figure that a single slip explains.
   *
   * @param lower the least that the neighbours allow
   * @param upper the most that they allow
   */
  record Mended(
      Reading reading, HourRule rule, RunningHours value, RunningHours lower, RunningHours upper)
      implements JudgedReading {}

  /** Not used. */
  record LeftOut(Reading reading, HourRule rule) implements JudgedReading {}
}
