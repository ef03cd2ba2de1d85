package leadline.history;

import leadline.quantity.RunningHours;

/**
 * Hours that a machine ran under observation.
 *
 * @param repaired how many of them rest on a repaired reading
 */
public record Exposure(RunningHours hours, RunningHours repaired) {

  static final Exposure NONE = new Exposure(RunningHours.ZERO, RunningHours.ZERO);

  Exposure minus(Exposure other) {
    return new Exposure(hours.minus(other.hours), repaired.minus(other.repaired));
  }
}
