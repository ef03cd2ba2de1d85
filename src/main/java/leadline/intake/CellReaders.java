package leadline.intake;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Set;
import leadline.fleet.Catalogue;
import leadline.fleet.CellType;
import leadline.fleet.Column;
import leadline.problem.NameFault;
import leadline.quantity.RunningHours;

/** Makes the reader of a column from the column's type. */
final class CellReaders {

  private final Set<String> components;
  private final Set<String> parts;
  private final Instant now;

  CellReaders(Catalogue catalogue, Instant now) {
    this.components = catalogue.componentNames();
    this.parts = catalogue.partNames();
    this.now = now;
  }

  /** A column whose type is that of a value is a column of such values. */
  @SuppressWarnings("unchecked")
  CellReader of(Column<?> column) {
    CellType<?> type = column.type();
    if (type instanceof CellType.Identifier || type instanceof CellType.Text) {
      Column<String> texts = (Column<String>) column;
      return (text, row, faults) -> row.with(texts, text);
    }
    if (type instanceof CellType.ComponentName) {
      return new NameCells((Column<String>) column, components, NameFault.UnknownComponent::new);
    }
    if (type instanceof CellType.PartName) {
      return new NameCells((Column<String>) column, parts, NameFault.UnknownPart::new);
    }
    if (type instanceof CellType.Word<?> word) {
      return WordCells.of(column, word);
    }
    if (type instanceof CellType.Whole whole) {
      return new WholeCells((Column<Long>) column, whole);
    }
    if (type instanceof CellType.Decimal decimal) {
      return new DecimalCells((Column<Double>) column, decimal);
    }
    if (type instanceof CellType.Hours hours) {
      return new HoursCells((Column<RunningHours>) column, hours);
    }
    if (type instanceof CellType.Day day) {
      return new DayCells((Column<LocalDate>) column, new DayText(day.earliest(), now));
    }
    if (type instanceof CellType.Moment moment) {
      return new MomentCells((Column<Instant>) column, new DayText(moment.earliest(), now), now);
    }
    throw new IllegalStateException("no reader for the cells of " + column.name());
  }
}
