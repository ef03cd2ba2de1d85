package leadline.sample;

import java.util.Map;
import leadline.fleet.Cells;
import leadline.fleet.Column;

/**
 * A row of a vessel's records.
 *
 * @param cells what the row says, or would say
 * @param ownWords text that stands in place of a cell and that no reader understands
 */
public record SampleRow(Cells cells, Map<Column<?>, String> ownWords) {

  public SampleRow {
    ownWords = Map.copyOf(ownWords);
  }

  static SampleRow of(Cells cells) {
    return new SampleRow(cells, Map.of());
  }

  boolean isUnderstood() {
    return ownWords.isEmpty();
  }
}
