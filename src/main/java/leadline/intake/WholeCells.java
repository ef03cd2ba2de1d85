package leadline.intake;

import java.util.List;
import leadline.fleet.CellType;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.problem.NumberFault;
import leadline.problem.RowFault;

/** Cells that hold a whole number. */
record WholeCells(Column<Long> column, CellType.Whole range) implements CellReader {

  @Override
  public void read(String text, Cells.Builder row, List<RowFault> faults) {
    if (!NumberText.isWhole(text)) {
      faults.add(new NumberFault.NotAWholeNumber(column.name(), text));
      return;
    }
    long value = NumberText.whole(text);
    if (value < range.least() || value > range.most()) {
      faults.add(
          new NumberFault.OutOfRange(
              column.name(), text, Long.toString(range.least()), Long.toString(range.most())));
    } else {
      row.with(column, value);
    }
  }
}
