package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import leadline.history.MachineHistory;
import leadline.quantity.Period;

/** How many springs were found broken, of those opened, and what the unopened ones leave open. */
public final class SpringBreakage implements Serializable {

  public static final TableColumn<Long> OVERHAULED =
      TableColumn.count(
          "overhauled", "overhauls of the component, of which the spring was or was not opened");
  public static final TableColumn<Long> OPENED =
      TableColumn.count(
          "opened", "overhauls at which the spring was opened and its condition stated");
  public static final TableColumn<Long> BROKEN =
      TableColumn.count("broken", "opened and found broken or cracked");
  public static final EstimateColumns BROKEN_SHARE =
      EstimateColumns.of(
          "broken_share",
          "1",
          "broken of opened: prevalence at the openings made, at their mix of ages, not a chance"
              + " of breaking; empty where none was opened",
          "exact (Clopper-Pearson)");
  public static final TableColumn<Double> SHARE_IF_UNOPENED_SOUND =
      TableColumn.real(
          "share_if_unopened_sound",
          "1",
          "broken of overhauled, as if every spring not opened were sound: the least it can be;"
              + " empty where none was overhauled");
  public static final TableColumn<Double> SHARE_IF_UNOPENED_BROKEN =
      TableColumn.real(
          "share_if_unopened_broken",
          "1",
          "broken and unopened of overhauled, as if every spring not opened were broken: the most"
              + " it can be; empty where none was overhauled");

  public static final TableSpec SPEC =
      TableSpec.of(
          "spring_breakage",
          "How many springs were found broken, of those opened, by hours since new, and what the"
              + " unopened ones leave open.",
          SharedColumns.OF_PART,
          List.of(SharedColumns.HOURS_BAND, OVERHAULED, OPENED, BROKEN),
          BROKEN_SHARE.all(),
          List.of(SHARE_IF_UNOPENED_SOUND, SHARE_IF_UNOPENED_BROKEN),
          EvidenceColumns.ALL);

  private final Scope scope;
  private final Strata<PartSubject, SpringCounts> strata = new Strata<>();

  SpringBreakage(Scope scope) {
    this.scope = scope;
  }

  void add(MachineHistory history) {
    VesselModel member = VesselModel.of(history.machine());
    for (PartSubject spring : springs()) {
      if (spring.isOn(history.machine())) {
        Period period = spring.window().endingWith(scope.month());
        strata.add(spring, member, SpringCounts.of(history, spring, period));
      }
    }
  }

  void merge(SpringBreakage other) {
    strata.merge(other.strata);
  }

  /** By component, spring, window, level, stratum; then all, the bands by age, unknown. */
  List<TableRow> rows(Instant knownAt) {
    Edition edition = new Edition(scope.month(), knownAt);
    List<TableRow> rows = new ArrayList<>();
    for (PartSubject spring : springs()) {
      for (var stratum : strata.of(spring)) {
        addRows(rows, edition, spring, stratum);
      }
    }
    return rows;
  }

  private static void addRows(
      List<TableRow> rows, Edition edition, PartSubject spring, Stratum<SpringCounts> stratum) {
    stratum
        .total()
        .byAge()
        .labelled(OpeningCounts::isAny)
        .forEach(
            (band, openings) -> {
              TableRow.Builder row = edition.row(SPEC, spring, stratum);
              Verdict verdict = HoursBand.verdict(band, spring.part(), openings.verdict());
              figures(row.with(SharedColumns.HOURS_BAND, band), openings, verdict);
              if (band.equals(HoursBand.ALL)) {
                stratum.total().hours().in(row);
              }
              rows.add(row.build());
            });
  }

  private static void figures(TableRow.Builder row, OpeningCounts openings, Verdict verdict) {
    row.with(OVERHAULED, openings.overhauled())
        .with(OPENED, openings.opened())
        .with(BROKEN, openings.failed());
    if (openings.isAny()) {
      long unopened = openings.overhauled() - openings.opened();
      row.with(SHARE_IF_UNOPENED_SOUND, ofOverhauled(openings.failed(), openings))
          .with(SHARE_IF_UNOPENED_BROKEN, ofOverhauled(openings.failed() + unopened, openings));
    }
    openings.evidence(verdict).in(openings.in(row, BROKEN_SHARE));
  }

  private static double ofOverhauled(long count, OpeningCounts openings) {
    return (double) count / openings.overhauled();
  }

  private List<PartSubject> springs() {
    return PartSubject.each(scope.catalogue()).stream()
        .filter(subject -> subject.part().isSpring())
        .toList();
  }
}
