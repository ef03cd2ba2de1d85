package leadline.intake;

import java.util.List;
import java.util.Set;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.problem.NameFault;
import leadline.problem.RowFault;

/** Cells that hold a name of the catalogue. */
record NameCells(Column<String> column, Set<String> names, Unknown unknown) implements CellReader {

  /** Makes the fault of a name that is not in the catalogue. */
  interface Unknown {
    NameFault fault(String column, String text, List<String> allowed);
  }

  @Override
  public void read(String text, Cells.Builder row, List<RowFault> faults) {
    if (names.contains(text)) {
      row.with(column, text);
    } else {
      faults.add(unknown.fault(column.name(), text, names.stream().sorted().toList()));
    }
  }
}
