package leadline.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leadline.fleet.Cells;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.MachineLayout;
import leadline.fleet.SourcedRow;
import leadline.quantity.Days;

/**
 * The machines of a vessel, those replaced under the same identifier apart. A machine goes on where
 * a later row has it as another model only; it was re-rated then. Where a row of another kind, size
 * or day in service follows, or one that begins later than the day after the row before ended, what
 * is on record before tells nothing of the parts fitted after.
 */
final class MachineRegister {

  private final Map<MachineId, List<MachineEntry>> machines;

  private MachineRegister(Map<MachineId, List<MachineEntry>> machines) {
    this.machines = machines;
  }

  /**
   * @param rows current rows of machines, at most one for each period
   */
  static MachineRegister of(List<SourcedRow> rows) {
    return new MachineRegister(
        rows.stream()
            .collect(
                Collectors.groupingBy(
                    row -> MachineEntry.of(row).id(),
                    LinkedHashMap::new,
                    Collectors.collectingAndThen(
                        Collectors.toList(), MachineRegister::inSuccession))));
  }

  /** Those of one identifier in time. */
  List<MachineEntry> machines() {
    return machines.values().stream().flatMap(Collection::stream).toList();
  }

  /**
   * The machine that had the identifier then. A moment at which one machine follows another belongs
   * to the one before.
   */
  MachineId of(MachineId identifier, Instant at) {
    return machines.getOrDefault(identifier, List.of()).stream()
        .filter(entry -> begins(entry).isBefore(at))
        .map(MachineEntry::id)
        .reduce(identifier, (earlier, later) -> later);
  }

  private static Instant begins(MachineEntry entry) {
    return entry.atFirst().validFrom().map(Days::startOf).orElse(Instant.MIN);
  }

  private static List<MachineEntry> inSuccession(List<SourcedRow> rows) {
    List<SourcedRow> inTime =
        rows.stream()
            .sorted(Comparator.comparing(row -> MachinePeriods.start(row.cells())))
            .toList();
    List<MachineEntry> machines = new ArrayList<>();
    List<MachineEntry> formerly = new ArrayList<>();
    MachineEntry entry = MachineEntry.of(inTime.get(0));
    for (int i = 1; i < inTime.size(); i++) {
      Cells before = inTime.get(i - 1).cells();
      Cells row = inTime.get(i).cells();
      MachineEntry ended = entry.until(row.need(MachineLayout.VALID_FROM).minusDays(1));
      MachineEntry next = MachineEntry.of(inTime.get(i));
      if (goesOn(before, row)) {
        formerly.add(ended);
        entry = next.withId(entry.id());
      } else {
        machines.add(ended.since(formerly));
        formerly.clear();
        entry = next.withId(entry.id().successor());
      }
    }
    machines.add(entry.since(formerly));
    return machines;
  }

  private static boolean goesOn(Cells before, Cells row) {
    LocalDate dayBefore = row.need(MachineLayout.VALID_FROM).minusDays(1);
    return MachinePeriods.isOneMachine(before, row)
        && before.find(MachineLayout.VALID_TO).filter(end -> end.isBefore(dayBefore)).isEmpty();
  }
}
