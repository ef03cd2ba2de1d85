package leadline.intake;

import java.util.List;
import leadline.fleet.Cells;
import leadline.problem.RowFault;

/** Reads the cells of one column. */
interface CellReader {

  /**
   * Puts the cell's value into the row, or adds the rule that it broke to the faults.
   *
   * @param text not empty, without blanks at either end
   */
  void read(String text, Cells.Builder row, List<RowFault> faults);
}
