package leadline.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The typed values of one well-formed row, in the order of its layout. Two rows with equal cells
 * say the same, however they were written.
 */
public final class Cells {

  private final RecordKind kind;
  private final @Nullable Object[] values;

  private Cells(RecordKind kind, @Nullable Object[] values) {
    this.kind = kind;
    this.values = values;
  }

  public RecordKind kind() {
    return kind;
  }

  /** The cell's value, or nothing where the ship left it empty. */
  @SuppressWarnings("unchecked") // the builder let in only values of the column's own type
  public <T> Optional<T> find(Column<T> column) {
    return Optional.ofNullable((T) values[column.index()]);
  }

  /** The cell of a key or required column. */
  public <T> T need(Column<T> column) {
    return find(column)
        .orElseThrow(() -> new IllegalStateException(kind.word() + " without " + column.name()));
  }

  /** A row of the same kind that begins with these values. */
  public Builder change() {
    return new Builder(kind, values.clone());
  }

  /** The values of the key columns. */
  public List<Object> key() {
    return kind.layout().key().stream().<Object>map(this::need).toList();
  }

  /** The key columns behind the vessel, as one text: equal for equal records of one vessel. */
  public String keyBelowVessel() {
    return keyBelowVessel(key());
  }

  private static String keyBelowVessel(List<Object> key) {
    return key.stream().skip(1).map(Object::toString).collect(Collectors.joining(" "));
  }

  /** The same row, of a vessel that has this identifier now. */
  public Cells ofVessel(String vessel) {
    @Nullable Object[] renamed = values.clone();
    renamed[kind.layout().key().get(0).index()] = vessel;
    return new Cells(kind, renamed);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Cells that && kind == that.kind && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return kind.word() + Arrays.toString(values);
  }

  public static Builder of(RecordKind kind) {
    return new Builder(kind, new @Nullable Object[kind.layout().columns().size()]);
  }

  /** Collects the values of a row. */
  public static final class Builder {
    private final RecordKind kind;
    private final @Nullable Object[] values;

    private Builder(RecordKind kind, @Nullable Object[] values) {
      this.kind = kind;
      this.values = values;
    }

    public <T> Builder with(Column<T> column, T value) {
      values[column.index()] = value;
      return this;
    }

    /** The value put into the column so far. */
    @SuppressWarnings("unchecked") // `with` let in only values of the column's own type
    public <T> Optional<T> find(Column<T> column) {
      return Optional.ofNullable((T) values[column.index()]);
    }

    /** The key as {@link Cells#keyBelowVessel} gives it, unless a column of it is missing. */
    public Optional<String> keyBelowVessel() {
      List<Object> key = new ArrayList<>();
      for (Column<?> column : kind.layout().key()) {
        value(column).ifPresent(key::add);
      }
      return key.size() == kind.layout().key().size()
          ? Optional.of(Cells.keyBelowVessel(key))
          : Optional.empty();
    }

    private <T> Optional<T> value(Column<T> column) {
      return find(column).or(column::whenEmpty);
    }

    /** Whether the row can be built: no cell is empty that every row needs. */
    public boolean isComplete() {
      return kind.layout().columns().stream()
          .allMatch(column -> values[column.index()] != null || !column.mustBeInHeader());
    }

    /** The row, with every empty cell that stands for a value filled in. */
    public Cells build() {
      kind.layout().columns().forEach(this::fillIn);
      return new Cells(kind, values);
    }

    private <T> void fillIn(Column<T> column) {
      if (values[column.index()] == null) {
        if (column.whenEmpty().isPresent()) {
          values[column.index()] = column.whenEmpty().get();
        } else if (column.need() != Column.Need.OPTIONAL) {
          throw new IllegalStateException(kind.word() + " without " + column.name());
        }
      }
    }
  }
}
