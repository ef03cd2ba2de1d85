package leadline.intake;

import java.math.BigDecimal;
import java.util.List;
import leadline.fleet.CellType;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.problem.NumberFault;
import leadline.problem.RowFault;

/** Cells that hold a decimal number. */
record DecimalCells(Column<Double> column, CellType.Decimal range) implements CellReader {

  @Override
  public void read(String text, Cells.Builder row, List<RowFault> faults) {
    if (!NumberText.isDecimal(text)) {
      faults.add(new NumberFault.NotANumber(column.name(), text));
      return;
    }
    double value = Double.parseDouble(text);
    if (value < range.least() || value > range.most()) {
      faults.add(
          new NumberFault.OutOfRange(
              column.name(), text, plain(range.least()), plain(range.most())));
    } else {
      row.with(column, value);
    }
  }

  private static String plain(double limit) {
    return BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
  }
}
