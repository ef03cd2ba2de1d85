package leadline.summary;

import java.util.Optional;
import leadline.fleet.MachineLayout;
import leadline.fleet.RecordKind;

/** The columns by which tables of single vessels say what a row is about. */
public final class VesselColumns {

  public static final TableColumn<String> VESSEL =
      TableColumn.key("vessel", "the vessel's identifier");
  public static final TableColumn<String> VESSEL_NAME =
      TableColumn.remark(
          "vessel_name", "the vessel's name, by the register; empty where it gives none");
  public static final TableColumn<String> MACHINE =
      TableColumn.key("machine", "the machine's identifier on the vessel");

  private VesselColumns() {}

  /** A row begun with the vessel. */
  static TableRow.Builder row(TableSpec spec, VesselAccount vessel, Edition edition) {
    return edition.row(spec).with(VESSEL, vessel.vessel()).with(VESSEL_NAME, name(vessel));
  }

  /** The last name given. */
  private static Optional<String> name(VesselAccount vessel) {
    return vessel.records().rows(RecordKind.MACHINES).stream()
        .flatMap(row -> row.cells().find(MachineLayout.VESSEL_NAME).stream())
        .reduce((first, second) -> second);
  }
}
