package leadline.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadline.fleet.CellType;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.Written;
import leadline.problem.NameFault;
import leadline.problem.RowFault;
import org.jspecify.annotations.Nullable;

/** Cells that hold one of a closed set of words. */
record WordCells<E extends Enum<E> & Written>(
    Column<E> column, Map<String, E> constants, List<String> words) implements CellReader {

  /** A column whose type is a word of a set is a column of such words. */
  @SuppressWarnings("unchecked")
  static <E extends Enum<E> & Written> WordCells<E> of(Column<?> column, CellType.Word<E> type) {
    Map<String, E> constants = new HashMap<>();
    for (E constant : type.words().getEnumConstants()) {
      constants.put(constant.word(), constant);
    }
    return new WordCells<>((Column<E>) column, constants, Written.words(type.words()));
  }

  @Override
  public void read(String text, Cells.Builder row, List<RowFault> faults) {
    @Nullable E constant = constants.get(text);
    if (constant != null) {
      row.with(column, constant);
    } else {
      faults.add(new NameFault.UnknownWord(column.name(), text, words));
    }
  }
}
