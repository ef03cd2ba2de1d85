package leadline.fleet;

import java.time.LocalDate;

/** The columns of {@code stock}: spares counted on board. */
public final class StockLayout {

  private static final Layout.Builder ROW = new Layout.Builder();

  public static final Column<String> VESSEL =
      ROW.key("vessel", CellTypes.IDENTIFIER, "the vessel's identifier");
  public static final Column<String> PART =
      ROW.key("part", new CellType.PartName(), "the part, by the catalogue");
  public static final Column<LocalDate> COUNTED_ON =
      ROW.key("counted_on", CellTypes.DAY, "day of the count");
  public static final Column<Long> ON_HAND =
      ROW.required("on_hand", CellTypes.QUANTITY, "pieces counted");

  static final Layout LAYOUT = ROW.sortedBy(VESSEL, PART, COUNTED_ON);

  private StockLayout() {}
}
