package leadline.history;

import leadline.quantity.RunningHours;

/**
 * Hours that a machine ran under observation.
 *
 * @param repaired how many of them rest on a repaired reading
 */
public record Exposure(RunningHours hours, RunningHours repaired) {}
