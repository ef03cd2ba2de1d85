package leadline.publish;

import leadline.summary.TableColumn;
import leadline.summary.ValueType;

/** How a column's values are written. */
public enum CellKind {
  TEXT,
  COUNT,
  REAL,
  MOMENT;

  /** Whether a number is part of a whole, to be read in percent. */
  public static boolean isShare(TableColumn<?> column) {
    String name = column.name();
    return of(column) == REAL && (name.contains("share") || name.startsWith("broken_by"));
  }

  public static CellKind of(TableColumn<?> column) {
    ValueType<?> type = column.type();
    if (type instanceof ValueType.Text) {
      return TEXT;
    } else if (type instanceof ValueType.Count) {
      return COUNT;
    } else if (type instanceof ValueType.Real) {
      return REAL;
    } else if (type instanceof ValueType.Moment) {
      return MOMENT;
    }
    throw new IllegalStateException("no way to write " + type);
  }
}
