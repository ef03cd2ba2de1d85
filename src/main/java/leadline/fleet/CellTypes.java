package leadline.fleet;

import java.time.LocalDate;
import leadline.quantity.RunningHours;

/** The cell types that several layouts share, with their limits. */
final class CellTypes {

  /** Before this day no running-hours record of a ship in service is plausible. */
  private static final LocalDate EARLIEST = LocalDate.of(1950, 1, 1);

  static final CellType.Identifier IDENTIFIER = new CellType.Identifier();
  static final CellType.Text TEXT = new CellType.Text();
  static final CellType.Day DAY = new CellType.Day(EARLIEST);
  static final CellType.Moment MOMENT = new CellType.Moment(EARLIEST);
  static final CellType.Whole QUANTITY = new CellType.Whole(0, 1_000_000);

  /** More hours than a machine can turn in a century. */
  static final CellType.Hours HOURS = new CellType.Hours(RunningHours.ofHours(999_999));

  private CellTypes() {}

  static <E extends Enum<E> & Written> CellType.Word<E> word(Class<E> words) {
    return new CellType.Word<>(words);
  }
}
