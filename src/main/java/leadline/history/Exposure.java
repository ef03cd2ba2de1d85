package leadline.history;

import leadline.quantity.RunningHours;

/**
 * Hours that a machine ran under observation.
 *
 * @param repaired how many of them rest on a repaired reading
 * @param interpolated how many of them lie in stretches of more than 45 days between readings
 * @param least the least that they can have been
 * @param most the most that they can have been
 */
public record Exposure(
    RunningHours hours,
    RunningHours repaired,
    RunningHours interpolated,
    RunningHours least,
    RunningHours most) {

  static final Exposure NONE =
      new Exposure(
          RunningHours.ZERO,
          RunningHours.ZERO,
          RunningHours.ZERO,
          RunningHours.ZERO,
          RunningHours.ZERO);
}
