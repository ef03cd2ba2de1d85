package leadline.history;

import java.time.Instant;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.fleet.Reason;
import leadline.quantity.RunningHours;

/**
 * The stretch from one overhaul of a position, or of an item, to the next.
 *
 * @param length hours run in it so far; none where its start was not seen
 * @param until when it ended, or was last known to run
 * @param endedBy the reason of the overhaul that ended it; none where it still runs
 */
public record OverhaulInterval(
    Component component,
    Subject subject,
    Optional<RunningHours> length,
    Instant until,
    Optional<Reason> endedBy) {

  /** What is followed from overhaul to overhaul. */
  public enum Subject implements leadline.fleet.Written {
    POSITION,
    ITEM
  }
}
