package leadline.fleet;

import java.util.Optional;

/**
 * A column of the plain layout: the one place that states its name, type, need and meaning.
 *
 * @param index the column's place in its layout, from 0
 * @param whenEmpty the value that an empty cell stands for
 */
public record Column<T>(
    int index, String name, CellType<T> type, Need need, Optional<T> whenEmpty, String meaning) {

  /** Whether a row can do without the column. */
  public enum Need {
    /** Part of the record's key. */
    KEY,
    REQUIRED,
    OPTIONAL
  }

  /** Whether a file without this column is unusable. */
  public boolean mustBeInHeader() {
    return need != Need.OPTIONAL && whenEmpty.isEmpty();
  }
}
