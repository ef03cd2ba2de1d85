package leadline.publish;

import leadline.summary.TableColumn;
import leadline.summary.ValueType;

/** How a column's values are written. */
public enum CellKind {
  TEXT,
  COUNT,
  REAL,
  MOMENT;

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
