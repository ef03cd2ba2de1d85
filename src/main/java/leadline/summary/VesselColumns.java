package leadline.summary;

import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineLayout;
import leadline.fleet.RecordKind;
import leadline.history.MachineHistory;
import leadline.history.PositionStanding;

/** The columns by which tables of single vessels say what a row is about. */
public final class VesselColumns {

  public static final TableColumn<String> VESSEL =
      TableColumn.key("vessel", "the vessel's identifier");
  public static final TableColumn<String> VESSEL_NAME =
      TableColumn.remark(
          "vessel_name", "the vessel's name, by the register; empty where it gives none");
  public static final TableColumn<String> MACHINE =
      TableColumn.key("machine", "the machine's identifier on the vessel");
  public static final TableColumn<String> POSITION =
      TableColumn.key(
          "position", "@unit/place; @unit where there is one a unit, @ where one a machine");

  /** The first columns of a table of vessels, or of what is on them. */
  static final List<TableColumn<?>> OF_VESSEL =
      List.of(SharedColumns.MONTH, SharedColumns.KNOWN_AT, VESSEL, VESSEL_NAME);

  private VesselColumns() {}

  /** A row begun with the vessel. */
  static TableRow.Builder row(TableSpec spec, VesselAccount vessel, Edition edition) {
    return edition.row(spec).with(VESSEL, vessel.vessel()).with(VESSEL_NAME, name(vessel));
  }

  /** A row begun with a position of one of the vessel's machines. */
  static TableRow.Builder row(
      TableSpec spec,
      VesselAccount vessel,
      Edition edition,
      MachineHistory machine,
      PositionStanding position) {
    return row(spec, vessel, edition)
        .with(MACHINE, machine.machine().id().machine())
        .with(SharedColumns.COMPONENT, position.component().name())
        .with(POSITION, position.position().label());
  }

  /** The last name given. */
  private static Optional<String> name(VesselAccount vessel) {
    return vessel.records().rows(RecordKind.MACHINES).stream()
        .flatMap(row -> row.cells().find(MachineLayout.VESSEL_NAME).stream())
        .reduce((first, second) -> second);
  }
}
