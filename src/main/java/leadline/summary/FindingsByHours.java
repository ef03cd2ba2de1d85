package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leadline.fleet.FoundWord;
import leadline.history.MachineHistory;
import leadline.quantity.Period;

/**
 * In which conditions parts were found, of those opened, by their hours since new. One vessel's
 * openings within a band are too few to say anything, so there are no rows of single vessels.
 */
public final class FindingsByHours implements Serializable {

  /** What {@link #FOUND} has beside the found words. */
  public static final String FAILED = "failed";

  public static final TableColumn<String> FOUND =
      TableColumn.key(
          "found",
          "failed (in any condition that means that the function of this part was lost), or one"
              + " found word; those with which the part was never found have no rows");
  public static final TableColumn<Long> OVERHAULED =
      TableColumn.count(
          "overhauled", "overhauls of the component, of which the part was or was not opened");
  public static final TableColumn<Long> OPENED =
      TableColumn.count(
          "opened", "overhauls at which the part was opened and its condition stated");
  public static final TableColumn<Long> TIMES_FOUND =
      TableColumn.count(
          "times_found",
          "opened and found so; one part may be found in several conditions, so that the words do"
              + " not add up to those opened");
  public static final EstimateColumns FOUND_SHARE =
      EstimateColumns.of(
          "found_share",
          "1",
          "found so of opened: prevalence at the openings made, not a chance; empty where none was"
              + " opened",
          "exact (Clopper-Pearson)");

  public static final TableSpec SPEC =
      TableSpec.of(
          "findings_by_hours",
          "In which conditions parts were found, of those opened, by hours since new: the fleet and"
              + " each model, since their records began.",
          SharedColumns.OF_PART,
          List.of(SharedColumns.HOURS_BAND, FOUND, OVERHAULED, OPENED, TIMES_FOUND),
          FOUND_SHARE.all(),
          EvidenceColumns.ALL);

  private final Scope scope;
  private final Strata<PartSubject, ByAge<FoundCounts>> strata = new Strata<>();

  FindingsByHours(Scope scope) {
    this.scope = scope;
  }

  void add(MachineHistory history) {
    VesselModel member = VesselModel.of(history.machine());
    subjects()
        .filter(subject -> subject.isOn(history.machine()))
        .forEach(
            subject -> {
              Period period = subject.window().endingWith(scope.month());
              List<PartAtOverhaul> overhauls = PartAtOverhaul.each(history, subject, period);
              strata.add(subject, member, ByAge.of(overhauls, FoundCounts::of));
            });
  }

  void merge(FindingsByHours other) {
    strata.merge(other.strata);
  }

  /**
   * By component, part, level, stratum; then all, the bands by age, unknown; then what was found.
   */
  List<TableRow> rows(Instant knownAt) {
    Edition edition = new Edition(scope.month(), knownAt);
    List<TableRow> rows = new ArrayList<>();
    subjects()
        .forEach(
            subject ->
                strata.of(subject).stream()
                    .filter(stratum -> stratum.level() != Level.VESSEL)
                    .forEach(stratum -> addRows(rows, edition, subject, stratum)));
    return rows;
  }

  private Stream<PartSubject> subjects() {
    return PartSubject.each(scope.catalogue()).stream()
        .filter(subject -> subject.window() == Window.SINCE_START);
  }

  private static void addRows(
      List<TableRow> rows,
      Edition edition,
      PartSubject subject,
      Stratum<ByAge<FoundCounts>> stratum) {
    ByAge<FoundCounts> byAge = stratum.total();
    Set<FoundWord> words = byAge.all().times().keySet();
    byAge
        .labelled(counts -> counts.openings().isAny())
        .forEach(
            (label, counts) -> {
              Band band = new Band(subject, label, counts.openings());
              rows.add(
                  band.row(edition.row(SPEC, subject, stratum), FAILED, band.openings().failed()));
              for (FoundWord word : words) {
                rows.add(
                    band.row(edition.row(SPEC, subject, stratum), word.word(), counts.times(word)));
              }
            });
  }

  /** What all rows of a band have in common. */
  private record Band(PartSubject subject, String label, OpeningCounts openings) {

    TableRow row(TableRow.Builder row, String found, long times) {
      Verdict verdict = HoursBand.verdict(label, subject.part(), openings.verdictOn(times));
      row.with(SharedColumns.HOURS_BAND, label)
          .with(FOUND, found)
          .with(OVERHAULED, openings.overhauled())
          .with(OPENED, openings.opened())
          .with(TIMES_FOUND, times);
      openings.in(row, FOUND_SHARE, times);
      return new Evidence(times, openings.opened(), openings.overhauled(), verdict).in(row).build();
    }
  }
}
