package leadline.fleet;

import java.time.LocalDate;
import java.util.Optional;
import leadline.origin.Origin;

/**
 * Pieces of a part that went into the vessel's stock or out of it.
 *
 * @param name the movement's identifier on the vessel
 * @param quantity pieces into stock; out of stock negative
 * @param overhaul the overhaul that used them, where the ship names it
 */
public record Movement(
    String vessel,
    String name,
    String part,
    LocalDate movedOn,
    long quantity,
    Optional<OverhaulId> overhaul,
    Origin origin) {

  public static Movement of(SourcedRow row) {
    Cells cells = row.cells();
    String vessel = cells.need(MovementLayout.VESSEL);
    return new Movement(
        vessel,
        cells.need(MovementLayout.MOVEMENT),
        cells.need(MovementLayout.PART),
        cells.need(MovementLayout.MOVED_ON),
        cells.need(MovementLayout.QUANTITY),
        cells.find(MovementLayout.OVERHAUL).map(overhaul -> new OverhaulId(vessel, overhaul)),
        row.origin());
  }
}
