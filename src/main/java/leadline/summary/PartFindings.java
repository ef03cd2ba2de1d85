package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import leadline.history.MachineHistory;
import leadline.quantity.Period;

/** In what condition parts were found at overhauls, of those opened. */
public final class PartFindings implements Serializable {

  public static final TableColumn<Long> OVERHAULED =
      TableColumn.count("overhauled", "overhauls of the component; a test only is no overhaul");
  public static final TableColumn<Long> OPENED =
      TableColumn.count(
          "opened", "overhauls at which the part was opened and its condition stated");
  public static final TableColumn<Long> OPENED_UNSTATED =
      TableColumn.count(
          "opened_unstated",
          "overhauls with a finding of the part that leaves open whether it was opened, or in what"
              + " condition it was; never taken as sound");
  public static final TableColumn<Long> FAILED =
      TableColumn.count("failed", "opened and found failed: function lost");
  public static final TableColumn<Long> REJECTED =
      TableColumn.count(
          "rejected",
          "opened, working but beyond limit, and renewed for it; none for a part renewed as a"
              + " routine");
  public static final TableColumn<Long> RENEWED =
      TableColumn.count("renewed", "renewed, opened or not");
  public static final EstimateColumns FAILED_SHARE =
      EstimateColumns.of(
          "failed_share",
          "1",
          "failed of opened; empty where none was opened",
          "exact (Clopper-Pearson)");

  public static final TableSpec SPEC =
      TableSpec.of(
          "part_findings",
          "In what condition parts were found at overhauls, of those opened.",
          SharedColumns.OF_PART,
          List.of(OVERHAULED, OPENED, OPENED_UNSTATED, FAILED, REJECTED, RENEWED),
          FAILED_SHARE.all(),
          EvidenceColumns.ALL);

  private final Scope scope;
  private final Strata<PartSubject, FindingCounts> strata = new Strata<>();

  PartFindings(Scope scope) {
    this.scope = scope;
  }

  void add(MachineHistory history) {
    VesselModel member = VesselModel.of(history.machine());
    for (PartSubject subject : PartSubject.each(scope.catalogue())) {
      if (subject.isOn(history.machine())) {
        Period period = subject.window().endingWith(scope.month());
        strata.add(subject, member, FindingCounts.of(history, subject, period));
      }
    }
  }

  void merge(PartFindings other) {
    strata.merge(other.strata);
  }

  /** By component, part, window, level, stratum. */
  List<TableRow> rows(Instant knownAt) {
    Edition edition = new Edition(scope.month(), knownAt);
    List<TableRow> rows = new ArrayList<>();
    for (PartSubject subject : PartSubject.each(scope.catalogue())) {
      for (var stratum : strata.of(subject)) {
        rows.add(row(edition.row(SPEC, subject, stratum), stratum.total()));
      }
    }
    return rows;
  }

  private static TableRow row(TableRow.Builder row, FindingCounts counts) {
    OpeningCounts openings = counts.openings();
    openings
        .in(row, FAILED_SHARE)
        .with(OVERHAULED, openings.overhauled())
        .with(OPENED, openings.opened())
        .with(OPENED_UNSTATED, counts.unstated())
        .with(FAILED, openings.failed())
        .with(REJECTED, counts.rejected())
        .with(RENEWED, counts.renewed());
    return openings.evidence(openings.verdict()).in(counts.hours().in(row)).build();
  }
}
