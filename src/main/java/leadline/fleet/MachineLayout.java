package leadline.fleet;

import java.time.LocalDate;

/** The columns of {@code machines}: one row for each machine with a running-hours counter. */
public final class MachineLayout {

  private static final Layout.Builder ROW = new Layout.Builder();

  public static final Column<String> VESSEL =
      ROW.key("vessel", CellTypes.IDENTIFIER, "the vessel's identifier");
  public static final Column<String> VESSEL_NAME =
      ROW.optional("vessel_name", CellTypes.TEXT, "the vessel's name for people");
  public static final Column<String> MACHINE =
      ROW.key("machine", CellTypes.IDENTIFIER, "the machine's identifier on the vessel");
  public static final Column<String> KIND =
      ROW.required("kind", CellTypes.IDENTIFIER, "what the machine is, in the catalogue's words");
  public static final Column<String> MODEL =
      ROW.required("model", CellTypes.IDENTIFIER, "the maker's type; like machines share one");
  public static final Column<Long> CYLINDERS =
      ROW.optional("cylinders", new CellType.Whole(1, 30), "number of cylinders");
  public static final Column<Long> PLACES_PER_CYLINDER =
      ROW.optional(
          "places_per_cylinder", new CellType.Whole(1, 12), "injectors or valves on each cylinder");
  public static final Column<Long> COUNTER_DIGITS =
      ROW.optional(
          "counter_digits", new CellType.Whole(3, 8), "whole digits the hours counter shows");
  public static final Column<LocalDate> IN_SERVICE_ON =
      ROW.optional("in_service_on", CellTypes.DAY, "day the machine was new");
  public static final Column<LocalDate> VALID_FROM =
      ROW.optional(
          "valid_from", CellTypes.DAY, "first day in the fleet, or as this machine or model");
  public static final Column<LocalDate> VALID_TO =
      ROW.optional("valid_to", CellTypes.DAY, "last day of the same");
  public static final Column<LocalDate> RECORDS_FROM =
      ROW.optional(
          "records_from", CellTypes.DAY, "first day from which every overhaul is on record");

  static final Layout LAYOUT = ROW.sortedBy(VESSEL, MACHINE);

  private MachineLayout() {}
}
