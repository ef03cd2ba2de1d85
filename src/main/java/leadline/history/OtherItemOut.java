package leadline.history;

import java.util.Optional;
import leadline.fleet.Item;
import leadline.fleet.Overhaul;
import leadline.fleet.Position;

/**
 * A removal of another item than the one on record at its position.
 *
 * @param believed the item on record there
 * @param fittedBy the overhaul that fitted it, where one did
 */
record OtherItemOut(
    Overhaul removal,
    Position position,
    Item believed,
    Optional<Overhaul> fittedBy,
    Item removed) {}
