package leadline.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The columns of one kind of record in the plain layout.
 *
 * @param sortedBy the columns by which stored files are sorted, so that a vessel's rows lie
 *     together
 */
public record Layout(List<Column<?>> columns, List<Column<?>> sortedBy) {

  public Layout {
    columns = List.copyOf(columns);
    sortedBy = List.copyOf(sortedBy);
  }

  public List<Column<?>> key() {
    return columns.stream().filter(column -> column.need() == Column.Need.KEY).toList();
  }

  public Optional<Column<?>> named(String name) {
    return columns.stream().filter(column -> column.name().equals(name)).findFirst();
  }

  static final class Builder {
    private final List<Column<?>> columns = new ArrayList<>();

    <T> Column<T> key(String name, CellType<T> type, String meaning) {
      return add(name, type, Column.Need.KEY, Optional.empty(), meaning);
    }

    <T> Column<T> keyOr(T whenEmpty, String name, CellType<T> type, String meaning) {
      return add(name, type, Column.Need.KEY, Optional.of(whenEmpty), meaning);
    }

    <T> Column<T> required(String name, CellType<T> type, String meaning) {
      return add(name, type, Column.Need.REQUIRED, Optional.empty(), meaning);
    }

    <T> Column<T> optional(String name, CellType<T> type, String meaning) {
      return add(name, type, Column.Need.OPTIONAL, Optional.empty(), meaning);
    }

    /** An optional column that holds what a column of another layout holds. */
    <T> Column<T> optionalLike(Column<T> other) {
      return optional(other.name(), other.type(), other.meaning());
    }

    private <T> Column<T> add(
        String name, CellType<T> type, Column.Need need, Optional<T> whenEmpty, String meaning) {
      Column<T> column = new Column<>(columns.size(), name, type, need, whenEmpty, meaning);
      columns.add(column);
      return column;
    }

    Layout sortedBy(Column<?>... sortedBy) {
      return new Layout(columns, List.of(sortedBy));
    }
  }
}
