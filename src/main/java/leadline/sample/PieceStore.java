package leadline.sample;

import java.util.List;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.sample.PartModel.Change;

/**
 * Where new pieces come from.
 *
 * @param hazardFactor of vessel and machine type, on all pieces
 * @param newNozzles the first day on which nozzles are of the new type
 * @param nozzleLifeFactor of those
 * @param revelation factor on the chance that a failure shows
 */
record PieceStore(
    double hazardFactor, int newNozzles, double nozzleLifeFactor, double revelation, Draw draw) {

  Piece piece(Component component, Part part, int day) {
    PartModel model = PartModels.of(component, part);
    PartModel current =
        model.changes().contains(Change.NOZZLE_TYPE) && day >= newNozzles
            ? model.longerLived(nozzleLifeFactor)
            : model;
    return new Piece(part, current, day, hazardFactor, revelation, draw);
  }

  Item item(String label, Component component, int day) {
    List<Piece> pieces =
        component.parts().stream().map(part -> piece(component, part, day)).toList();
    return new Item(label, pieces);
  }
}
