package leadline.intake;

import java.util.List;
import leadline.fleet.CellType;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.problem.NumberFault;
import leadline.problem.RowFault;
import leadline.quantity.RunningHours;

/** Cells that hold running hours, kept to a tenth. */
record HoursCells(Column<RunningHours> column, CellType.Hours range) implements CellReader {

  @Override
  public void read(String text, Cells.Builder row, List<RowFault> faults) {
    if (!NumberText.isDecimal(text) || NumberText.isNegative(text)) {
      faults.add(new NumberFault.NotHours(column.name(), text));
      return;
    }
    RunningHours hours = RunningHours.ofTenths(NumberText.tenths(text));
    if (hours.isAbove(range.most())) {
      faults.add(
          new NumberFault.OutOfRange(
              column.name(), text, RunningHours.ZERO.toString(), range.most().toString()));
    } else {
      row.with(column, hours);
    }
  }
}
