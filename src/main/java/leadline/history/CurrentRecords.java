package leadline.history;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import leadline.fleet.Finding;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulId;
import leadline.fleet.Reading;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.problem.Problem;

/**
 * One vessel's rows, with duplicates, corrections, withdrawals and deletions decided.
 *
 * @param arrived the current rows, by arrival; each as it first arrived
 * @param withdrawn the overhauls that the ship cancelled or deleted
 * @param problems what the rows leave open
 */
public record CurrentRecords(
    String vessel,
    List<ArrivedRow> arrived,
    Set<OverhaulId> withdrawn,
    Census census,
    List<Problem> problems) {

  public CurrentRecords {
    arrived = List.copyOf(arrived);
    withdrawn = Set.copyOf(withdrawn);
    problems = List.copyOf(problems);
  }

  /** Decides what stands of exports that hold changes. */
  public static CurrentRecords of(String vessel, Collection<ArrivedRow> rows) {
    return of(vessel, rows, Exports.UNNAMED);
  }

  /**
   * Decides what stands.
   *
   * @param rows every stored row of the vessel, in any order, and none of another
   * @param exports what the sources say of records that their exports lack
   */
  public static CurrentRecords of(String vessel, Collection<ArrivedRow> rows, Exports exports) {
    if (!rows.stream().allMatch(row -> row.vessel().equals(vessel))) {
      throw new IllegalArgumentException("rows of vessels other than " + vessel);
    }
    Collection<List<ArrivedRow>> records =
        rows.stream()
            .collect(Collectors.groupingBy(row -> RecordKey.of(row.row().cells())))
            .values();
    VesselSnapshots snapshots = VesselSnapshots.of(vessel, rows, exports);
    List<RecordVersions> decided =
        ReturnedSheets.appliedTo(
            records.stream()
                .flatMap(record -> decided(record, snapshots.standing(record)).stream())
                .toList());
    return new CurrentRecords(
        vessel,
        decided.stream()
            .filter(record -> !record.isWithdrawn())
            .map(RecordVersions::standing)
            .sorted(Comparator.comparing(ArrivedRow::arrival))
            .toList(),
        withdrawnOverhauls(decided),
        new Census(
            decided.stream()
                .collect(
                    Collectors.toMap(
                        CurrentRecords::kind, RecordVersions::count, Census.Count::plus))),
        snapshots.problems());
  }

  private static List<RecordVersions> decided(List<ArrivedRow> record, List<ArrivedRow> notEnded) {
    return record.get(0).row().cells().kind() == RecordKind.MACHINES
        ? MachinePeriods.decided(record, notEnded)
        : List.of(RecordVersions.of(record, notEnded));
  }

  /** The current rows, by arrival. */
  public List<SourcedRow> rows() {
    return arrived.stream().map(ArrivedRow::row).toList();
  }

  public List<SourcedRow> rows(RecordKind kind) {
    return rows().stream().filter(row -> row.cells().kind() == kind).toList();
  }

  /** The records of which history is made. A cancelled overhaul takes its findings along. */
  public VesselRecords forHistory() {
    MachineRegister register = MachineRegister.of(rows(RecordKind.MACHINES));
    return new VesselRecords(
        vessel,
        register.machines(),
        each(RecordKind.HOURS, Reading::of).stream()
            .map(reading -> reading.of(register.of(reading.machine(), reading.at())))
            .toList(),
        each(RecordKind.OVERHAULS, Overhaul::of).stream()
            .map(overhaul -> overhaul.of(register.of(overhaul.machine(), overhaul.removedAt())))
            .toList(),
        each(RecordKind.FINDINGS, Finding::of).stream()
            .filter(finding -> !withdrawn.contains(finding.overhaul()))
            .toList());
  }

  private <T> List<T> each(RecordKind kind, Function<SourcedRow, T> reader) {
    return rows(kind).stream().map(reader).toList();
  }

  private static Set<OverhaulId> withdrawnOverhauls(List<RecordVersions> decided) {
    Set<OverhaulId> withdrawn = new HashSet<>();
    for (RecordVersions record : decided) {
      if (record.isWithdrawn() && kind(record) == RecordKind.OVERHAULS) {
        withdrawn.add(Overhaul.of(record.standing().row()).id());
      }
    }
    return withdrawn;
  }

  private static RecordKind kind(RecordVersions record) {
    return record.standing().row().cells().kind();
  }
}
