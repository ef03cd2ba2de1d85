package leadline.intake;

import java.time.LocalDate;
import java.util.List;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.problem.RowFault;
import leadline.problem.TimeFault;

/** Cells that hold a date. */
record DayCells(Column<LocalDate> column, DayText days) implements CellReader {

  @Override
  public void read(String text, Cells.Builder row, List<RowFault> faults) {
    if (text.length() != DayText.LENGTH || !DayText.beginsLikeADate(text)) {
      faults.add(new TimeFault.NotADate(column.name(), text));
      return;
    }
    days.recordDay(column.name(), text, faults).ifPresent(day -> row.with(column, day));
  }
}
