package leadline.history;

import java.time.Instant;
import leadline.fleet.Component;
import leadline.fleet.Item;
import leadline.fleet.Part;
import leadline.quantity.RunningHours;

/**
 * A life of a part in an item.
 *
 * @param number 1 for the part's first life on record in the item
 * @param entry age from which the life is known; zero unless records began later
 * @param until when it ended, or was last known
 */
public record PartLife(
    Component component,
    Item item,
    Part part,
    int number,
    LifeOrigin origin,
    RunningHours entry,
    Observation observation,
    Instant until,
    LifeEnd endedBy) {}
