package leadline.sample;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import leadline.fleet.Column;
import leadline.fleet.FindingLayout;
import leadline.fleet.HoursLayout;
import leadline.fleet.MachineLayout;
import leadline.fleet.MovementLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;
import leadline.quantity.Days;

/**
 * Writes the plain layout: one register of machines, and for each vessel its hours, overhauls,
 * findings and movements of spares, with the columns that these ships fill in.
 */
public final class PlainLayoutWriter implements FleetWriter {

  private static final List<Column<?>> MACHINES =
      List.of(
          MachineLayout.VESSEL,
          MachineLayout.VESSEL_NAME,
          MachineLayout.MACHINE,
          MachineLayout.KIND,
          MachineLayout.MODEL,
          MachineLayout.CYLINDERS,
          MachineLayout.PLACES_PER_CYLINDER,
          MachineLayout.COUNTER_DIGITS,
          MachineLayout.IN_SERVICE_ON,
          MachineLayout.RECORDS_FROM);

  private static final Map<RecordKind, List<Column<?>>> BY_VESSEL =
      Map.of(
          RecordKind.HOURS,
          List.of(
              HoursLayout.VESSEL,
              HoursLayout.MACHINE,
              HoursLayout.READ_AT,
              HoursLayout.HOURS,
              HoursLayout.KIND),
          RecordKind.OVERHAULS,
          List.of(
              OverhaulLayout.VESSEL,
              OverhaulLayout.OVERHAUL,
              OverhaulLayout.MACHINE,
              OverhaulLayout.COMPONENT,
              OverhaulLayout.UNIT,
              OverhaulLayout.PLACE,
              OverhaulLayout.REMOVED_SERIAL,
              OverhaulLayout.FITTED_SERIAL,
              OverhaulLayout.DONE_ON,
              OverhaulLayout.MACHINE_HOURS,
              OverhaulLayout.REASON),
          RecordKind.FINDINGS,
          List.of(
              FindingLayout.VESSEL,
              FindingLayout.OVERHAUL,
              FindingLayout.PART,
              FindingLayout.OPENED,
              FindingLayout.FOUND,
              FindingLayout.ACTION,
              FindingLayout.REVEALED,
              FindingLayout.HOURS_SINCE_NEW,
              FindingLayout.PART_NUMBER),
          RecordKind.MOVEMENTS,
          List.of(
              MovementLayout.VESSEL,
              MovementLayout.MOVEMENT,
              MovementLayout.PART,
              MovementLayout.MOVED_ON,
              MovementLayout.QUANTITY,
              MovementLayout.OVERHAUL));

  private final Path folder;
  private final CsvFile machines;

  /**
   * @param folder made if it is not there
   */
  public PlainLayoutWriter(Path folder) throws IOException {
    this.folder = Files.createDirectories(folder);
    this.machines = new CsvFile(folder.resolve("machines.csv"), ",", names(MACHINES));
  }

  @Override
  public void write(SampleVessel vessel) throws IOException {
    write(vessel.rows(RecordKind.MACHINES), MACHINES, machines);
    String separator = isFaulty(vessel) ? ";" : ",";
    for (RecordKind kind : BY_VESSEL.keySet().stream().sorted().toList()) {
      List<Column<?>> columns = BY_VESSEL.getOrDefault(kind, List.of());
      Path file = folder.resolve(kind.word() + "_" + vessel.character().vessel() + ".csv");
      try (CsvFile csv = new CsvFile(file, separator, names(columns))) {
        write(vessel.rows(kind), columns, csv);
      }
    }
  }

  private static boolean isFaulty(SampleVessel vessel) {
    return vessel.errors().stream().anyMatch(error -> error.kind() == RecordError.SEPARATOR_FAULT);
  }

  @Override
  public void close() throws IOException {
    machines.close();
  }

  private static List<String> names(List<Column<?>> columns) {
    return columns.stream().<String>map(Column::name).toList();
  }

  private static void write(List<SampleRow> rows, List<Column<?>> columns, CsvFile csv)
      throws IOException {
    for (SampleRow row : rows) {
      csv.write(columns.stream().map(column -> text(row, column)).toList());
    }
  }

  private static String text(SampleRow row, Column<?> column) {
    String ownWords = row.ownWords().get(column);
    return ownWords == null
        ? row.cells().find(column).map(PlainLayoutWriter::text).orElse("")
        : ownWords;
  }

  private static String text(Object value) {
    if (value instanceof Written word) {
      return word.word();
    }
    return value instanceof Instant moment ? Days.asWritten(moment) : value.toString();
  }
}
