package leadline.page;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leadline.summary.DueForecast;
import leadline.summary.DueList;
import leadline.summary.TableRow;
import leadline.summary.VesselColumns;

/** The positions that each vessel overhauls next. */
final class NextBatch {

  /** Overdue by most hours first, then what falls due first by the earliest forecast. */
  private static final Comparator<TableRow> PRESSING =
      Comparator.comparing((TableRow row) -> row.find(DueForecast.DUE_EARLY).orElse(""))
          .thenComparing(row -> row.find(DueList.REMAINING).orElse(0.0));

  private NextBatch() {}

  /**
   * By vessel, the group of the due list to which its most pressing position belongs, in the list's
   * order; no entry of a vessel with nothing overdue or due soon.
   */
  static Map<String, List<TableRow>> byVessel(List<TableRow> due) {
    Map<String, List<TableRow>> batches = new LinkedHashMap<>();
    due.stream()
        .filter(row -> DueList.COMING.contains(row.need(DueList.STANDING)))
        .collect(
            Collectors.groupingBy(
                row -> row.need(VesselColumns.VESSEL),
                LinkedHashMap::new,
                Collectors.minBy(PRESSING)))
        .forEach(
            (vessel, first) -> first.ifPresent(row -> batches.put(vessel, together(due, row))));
    return batches;
  }

  private static List<TableRow> together(List<TableRow> due, TableRow first) {
    return due.stream()
        .filter(
            row ->
                List.of(VesselColumns.VESSEL, VesselColumns.MACHINE, DueList.GROUP).stream()
                    .allMatch(column -> row.find(column).equals(first.find(column))))
        .toList();
  }
}
