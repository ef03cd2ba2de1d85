package leadline.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.MachineLayout;

/**
 * Which rows of one machine correct each other, and which tell of successive periods of it. Rows of
 * one {@code valid_from} are versions of one period. So are those of another {@code valid_from},
 * unless they tell of another kind, model, size or day in service, or the earlier one says that it
 * ended before the later one began.
 */
final class MachinePeriods {

  private static final List<Column<?>> WHAT_ONLY_ANOTHER_MACHINE_HAS =
      List.of(
          MachineLayout.KIND,
          MachineLayout.CYLINDERS,
          MachineLayout.PLACES_PER_CYLINDER,
          MachineLayout.IN_SERVICE_ON);

  private MachinePeriods() {}

  /**
   * Each period of the machine as its last version has it, the periods in time. What a snapshot has
   * ended is counted with the first.
   *
   * @param rows all rows of one machine's identifier, in any order; at least one
   * @param notEnded those of them that no snapshot has ended
   */
  static List<RecordVersions> decided(List<ArrivedRow> rows, List<ArrivedRow> notEnded) {
    if (notEnded.isEmpty()) {
      return List.of(RecordVersions.of(rows, notEnded));
    }
    List<ArrivedRow> counted = new ArrayList<>(rows);
    counted.removeAll(notEnded);
    List<RecordVersions> periods = new ArrayList<>();
    for (List<ArrivedRow> versions : of(notEnded)) {
      counted.addAll(versions);
      periods.add(RecordVersions.of(counted, versions));
      counted.clear();
    }
    return periods;
  }

  private static List<List<ArrivedRow>> of(List<ArrivedRow> rows) {
    TreeMap<LocalDate, List<ArrivedRow>> byStart = new TreeMap<>();
    rows.forEach(
        row -> byStart.computeIfAbsent(start(row.row().cells()), s -> new ArrayList<>()).add(row));
    List<List<ArrivedRow>> periods = new ArrayList<>();
    for (List<ArrivedRow> versions : byStart.values()) {
      Optional<List<ArrivedRow>> before =
          periods.isEmpty() ? Optional.empty() : Optional.of(periods.get(periods.size() - 1));
      before
          .filter(earlier -> isCorrectedBy(standing(earlier), standing(versions)))
          .ifPresentOrElse(earlier -> earlier.addAll(versions), () -> periods.add(versions));
    }
    return periods;
  }

  /** The first day of the row's period; the earliest of all where it has none. */
  static LocalDate start(Cells row) {
    return row.find(MachineLayout.VALID_FROM).orElse(LocalDate.MIN);
  }

  /** Whether nothing that the rows say speaks against their being of one machine. */
  static boolean isOneMachine(Cells one, Cells other) {
    return WHAT_ONLY_ANOTHER_MACHINE_HAS.stream()
        .allMatch(column -> agree(one.find(column), other.find(column)));
  }

  private static boolean isCorrectedBy(Cells earlier, Cells later) {
    return isOneMachine(earlier, later)
        && earlier.need(MachineLayout.MODEL).equals(later.need(MachineLayout.MODEL))
        && earlier
            .find(MachineLayout.VALID_TO)
            .filter(lastDay -> lastDay.isBefore(start(later)))
            .isEmpty();
  }

  /** An empty cell contradicts nothing. */
  private static boolean agree(Optional<?> one, Optional<?> other) {
    return one.isEmpty() || other.isEmpty() || one.equals(other);
  }

  private static Cells standing(List<ArrivedRow> versions) {
    return RecordVersions.of(versions, versions).cells();
  }
}
