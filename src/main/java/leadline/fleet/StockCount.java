package leadline.fleet;

import java.io.Serializable;
import java.time.LocalDate;
import leadline.origin.Origin;

/**
 * Pieces of a part that were counted on board.
 *
 * @param onHand pieces, not negative
 */
public record StockCount(
    String vessel, String part, LocalDate countedOn, long onHand, Origin origin)
    implements Serializable {

  public static StockCount of(SourcedRow row) {
    Cells cells = row.cells();
    return new StockCount(
        cells.need(StockLayout.VESSEL),
        cells.need(StockLayout.PART),
        cells.need(StockLayout.COUNTED_ON),
        cells.need(StockLayout.ON_HAND),
        row.origin());
  }
}
