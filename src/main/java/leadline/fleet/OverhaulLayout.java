package leadline.fleet;

import java.time.Instant;
import java.time.LocalDate;
import leadline.quantity.RunningHours;

/** The columns of {@code overhauls}: one row for each visit to a component at its position. */
public final class OverhaulLayout {

  private static final Layout.Builder ROW = new Layout.Builder();

  public static final Column<String> VESSEL =
      ROW.key("vessel", CellTypes.IDENTIFIER, "the vessel's identifier");
  public static final Column<String> OVERHAUL =
      ROW.key("overhaul", CellTypes.IDENTIFIER, "the record's identifier on the vessel");
  public static final Column<String> MACHINE =
      ROW.required("machine", CellTypes.IDENTIFIER, "the machine's identifier on the vessel");
  public static final Column<String> COMPONENT =
      ROW.required("component", new CellType.ComponentName(), "the component, by the catalogue");
  public static final Column<Long> UNIT =
      ROW.optional("unit", new CellType.Whole(1, 30), "the cylinder, numbered from one end");
  public static final Column<Long> PLACE =
      ROW.optional("place", new CellType.Whole(1, 12), "which of the cylinder's valves");
  public static final Column<String> REMOVED_SERIAL =
      ROW.optional("removed_serial", CellTypes.IDENTIFIER, "serial of the item that came out");
  public static final Column<String> FITTED_SERIAL =
      ROW.optional("fitted_serial", CellTypes.IDENTIFIER, "serial of the item that went in");
  public static final Column<LocalDate> DONE_ON =
      ROW.required("done_on", CellTypes.DAY, "day of the overhaul");
  public static final Column<LocalDate> REMOVED_ON =
      ROW.optional("removed_on", CellTypes.DAY, "day it came out, where not done_on");
  public static final Column<LocalDate> FITTED_ON =
      ROW.optional("fitted_on", CellTypes.DAY, "day the next went in, where not done_on");
  public static final Column<RunningHours> MACHINE_HOURS =
      ROW.optional("machine_hours", CellTypes.HOURS, "the machine's hours at the removal");
  public static final Column<Reason> REASON =
      ROW.required("reason", CellTypes.word(Reason.class), "why it was done");
  public static final Column<Double> OPENING_PRESSURE =
      ROW.optional(
          "opening_pressure_bar", new CellType.Decimal(0, 2000), "opening pressure as left, bar");
  public static final Column<TestResult> TEST_RESULT =
      ROW.optional("test_result", CellTypes.word(TestResult.class), "outcome of the stand test");
  public static final Column<Long> LAP_COUNT =
      ROW.optional("lap_count", CellTypes.QUANTITY, "times the seat was lapped so far");
  public static final Column<String> REMARK =
      ROW.optional("remark", CellTypes.TEXT, "the ship's own words");
  public static final Column<Status> STATUS =
      ROW.optional("status", CellTypes.word(Status.class), "cancelled withdraws the record");
  public static final Column<Instant> REVISED_AT =
      ROW.optional("revised_at", CellTypes.MOMENT, "when this version was written");

  static final Layout LAYOUT = ROW.sortedBy(VESSEL, MACHINE, DONE_ON);

  private OverhaulLayout() {}
}
