package leadline.history;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.fleet.Item;
import leadline.fleet.Overhaul;
import leadline.fleet.Position;
import leadline.quantity.RunningHours;

/**
 * An overhaul or test, joined to what it was done to.
 *
 * @param position none where the record does not say which, or names one the machine does not have
 * @param removed the item that came out; none without a position
 * @param machineHours the machine's hours at the removal, as trusted
 * @param parts every part of the component, in the catalogue's order, with what is known of it
 */
public record Visit(
    Overhaul overhaul,
    Component component,
    Optional<Position> position,
    Optional<Item> removed,
    Instant at,
    RunningHours machineHours,
    List<PartState> parts) {

  public Visit {
    parts = List.copyOf(parts);
  }
}
