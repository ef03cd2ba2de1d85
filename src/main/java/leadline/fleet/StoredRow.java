package leadline.fleet;

import java.util.SortedMap;
import leadline.origin.Origin;

/**
 * A well-formed row as the lake keeps it.
 *
 * @param extras the cells of columns that the layout does not know, by header
 * @param raw the row's text as it stood in the file
 */
public record StoredRow(SourcedRow row, SortedMap<String, String> extras, String raw) {

  public Cells cells() {
    return row.cells();
  }

  public Origin origin() {
    return row.origin();
  }
}
