package leadline.summary;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import leadline.fleet.Catalogue;
import leadline.history.VesselHistory;
import leadline.quantity.ReportMonth;

/** Published rows, narrowed down by the values of columns. */
record Rows(List<TableRow> rows) {

  static final Instant KNOWN_AT = Instant.parse("2025-01-20T06:30:00Z");
  static final ReportMonth MONTH = ReportMonth.parse("2024-12");

  static Rows of(TableSpec spec, VesselHistory... vessels) {
    return of(spec, TestCatalogue.CATALOGUE, vessels);
  }

  static Rows of(TableSpec spec, Catalogue catalogue, VesselHistory... vessels) {
    MonthlySummary summary = MonthlySummary.start(catalogue, MONTH);
    for (VesselHistory vessel : vessels) {
      summary.add(vessel);
    }
    return new Rows(tables(summary).getOrDefault(spec, List.of()));
  }

  static Map<TableSpec, List<TableRow>> tables(MonthlySummary summary) {
    return summary.rows(
        KNOWN_AT, summary.lifeGroups(KNOWN_AT).stream().map(LifeGroup::rows).toList());
  }

  <T> Rows where(TableColumn<T> column, T value) {
    return new Rows(rows.stream().filter(row -> row.need(column).equals(value)).toList());
  }

  Rows sinceStart() {
    return where(SharedColumns.WINDOW, "since-start");
  }

  Rows fleet() {
    return where(SharedColumns.LEVEL, "fleet");
  }

  Rows stratum(String level, String name) {
    return where(SharedColumns.LEVEL, level).where(SharedColumns.STRATUM, name);
  }

  TableRow only() {
    if (rows.size() != 1) {
      throw new AssertionError("one row expected, not " + rows);
    }
    return rows.get(0);
  }

  <T> List<T> each(TableColumn<T> column) {
    return rows.stream().map(row -> row.need(column)).toList();
  }
}
