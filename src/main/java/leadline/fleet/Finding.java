package leadline.fleet;

import java.util.Optional;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;

/**
 * What the ship wrote of one part at one overhaul.
 *
 * @param opened empty where the ship does not say
 */
public record Finding(
    OverhaulId overhaul,
    String part,
    int modeNumber,
    Optional<Statement> opened,
    Optional<FoundWord> found,
    Optional<Action> action,
    Optional<Revealed> revealed,
    Optional<RunningHours> hoursSinceNew,
    Origin origin) {

  public static Finding of(SourcedRow row) {
    Cells cells = row.cells();
    return new Finding(
        new OverhaulId(cells.need(FindingLayout.VESSEL), cells.need(FindingLayout.OVERHAUL)),
        cells.need(FindingLayout.PART),
        cells.need(FindingLayout.MODE_NO).intValue(),
        cells.find(FindingLayout.OPENED),
        cells.find(FindingLayout.FOUND),
        cells.find(FindingLayout.ACTION),
        cells.find(FindingLayout.REVEALED),
        cells.find(FindingLayout.HOURS_SINCE_NEW),
        row.origin());
  }
}
