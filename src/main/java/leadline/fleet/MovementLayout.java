package leadline.fleet;

import java.time.LocalDate;

/** The columns of {@code movements}: spares into and out of stock. */
public final class MovementLayout {

  private static final Layout.Builder ROW = new Layout.Builder();

  public static final Column<String> VESSEL =
      ROW.key("vessel", CellTypes.IDENTIFIER, "the vessel's identifier");
  public static final Column<String> MOVEMENT =
      ROW.key("movement", CellTypes.IDENTIFIER, "the movement's identifier on the vessel");
  public static final Column<String> PART =
      ROW.required("part", new CellType.PartName(), "the part, by the catalogue");
  public static final Column<LocalDate> MOVED_ON =
      ROW.required("moved_on", CellTypes.DAY, "day of the movement");
  public static final Column<Long> QUANTITY =
      ROW.required(
          "quantity",
          new CellType.Whole(-1_000_000, 1_000_000),
          "pieces into stock; out of stock negative");
  public static final Column<String> OVERHAUL =
      ROW.optional("overhaul", CellTypes.IDENTIFIER, "the overhaul that used them");

  static final Layout LAYOUT = ROW.sortedBy(VESSEL, PART, MOVED_ON);

  private MovementLayout() {}
}
