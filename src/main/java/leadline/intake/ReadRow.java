package leadline.intake;

import java.util.List;
import java.util.SortedMap;
import leadline.fleet.Cells;
import leadline.fleet.RecordKind;
import leadline.problem.RowFault;

/**
 * What the fields of a row said.
 *
 * @param cells complete only if there are no faults
 * @param extras the cells of columns that the layout does not know, by header; empty ones left out
 * @param trimmedCells cells that lost blanks at either end
 */
record ReadRow(
    Cells.Builder cells,
    SortedMap<String, String> extras,
    int trimmedCells,
    List<RowFault> faults) {

  /** Every layout begins with the vessel. */
  private static final int VESSEL = 0;

  /** The record's key below its vessel; empty where a column of it is wrong or missing. */
  String key(RecordKind kind) {
    boolean isWrong =
        faults.stream()
            .anyMatch(
                fault ->
                    kind.layout().key().stream()
                        .anyMatch(column -> column.name().equals(fault.column())));
    return isWrong ? "" : cells.keyBelowVessel().orElse("");
  }

  /** The vessel that the row names; empty where it names none. */
  String vessel(RecordKind kind) {
    return cells.find(kind.layout().columns().get(VESSEL)).map(Object::toString).orElse("");
  }
}
