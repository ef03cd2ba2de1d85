package leadline.summary;

import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadline.stats.Limits;

/** One row of a published table, its values in the order of the table's columns. */
public final class TableRow implements Serializable {

  private final Map<TableColumn<?>, Object> values;

  private TableRow(Map<TableColumn<?>, Object> values) {
    this.values = values;
  }

  @SuppressWarnings("unchecked") // the builder let in only values of the column's own type
  public <T> Optional<T> find(TableColumn<T> column) {
    return Optional.ofNullable((T) values.get(column));
  }

  public <T> T need(TableColumn<T> column) {
    return find(column)
        .orElseThrow(() -> new IllegalStateException("row without " + column.name()));
  }

  @Override
  public boolean equals(@org.jspecify.annotations.Nullable Object other) {
    return other instanceof TableRow that && values.equals(that.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    values.forEach(
        (column, value) -> text.append(column.name()).append('=').append(value).append(' '));
    return text.toString().strip();
  }

  /** Collects the values of a row and refuses a column that the table does not have. */
  public static final class Builder {
    private final TableSpec spec;
    private final Map<TableColumn<?>, Object> values = new LinkedHashMap<>();

    Builder(TableSpec spec) {
      this.spec = spec;
    }

    public <T extends Serializable> Builder with(TableColumn<T> column, T value) {
      if (!spec.columns().contains(column)) {
        throw new IllegalArgumentException(spec.name() + " has no column " + column.name());
      }
      if (value instanceof Double number && !Double.isFinite(number)) {
        throw new IllegalArgumentException(column.name() + " must be finite, not " + number);
      }
      values.put(column, value);
      return this;
    }

    public <T extends Serializable> Builder with(TableColumn<T> column, Optional<T> value) {
      value.ifPresent(present -> with(column, present));
      return this;
    }

    public Builder with(TableColumn<Double> column, OptionalDouble value) {
      value.ifPresent(present -> with(column, present));
      return this;
    }

    Builder with(EstimateColumns columns, double estimate, Limits limits) {
      return with(columns.estimate(), estimate).with(columns, limits);
    }

    /** Limits beside an estimate, an upper one that is open left empty. */
    Builder with(EstimateColumns columns, Limits limits) {
      with(columns.lower(), limits.lower());
      return Double.isInfinite(limits.upper()) ? this : with(columns.upper(), limits.upper());
    }

    /** The row; fails where a key or required column has no value. */
    public TableRow build() {
      LinkedHashMap<TableColumn<?>, Object> inOrder = new LinkedHashMap<>();
      for (TableColumn<?> column : spec.columns()) {
        Optional<Object> value = Optional.ofNullable(values.get(column));
        if (value.isEmpty() && column.need() != TableColumn.Need.OPTIONAL) {
          throw new IllegalStateException(spec.name() + " row without " + column.name());
        }
        value.ifPresent(present -> inOrder.put(column, present));
      }
      return new TableRow(inOrder);
    }
  }
}
