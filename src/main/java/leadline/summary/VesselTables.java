package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import leadline.quantity.ReportMonth;

/**
 * The tables that list what each vessel has, vessel by vessel: added and merged in any order with
 * the same rows. Adding and merging change this object and nothing else; not safe for use by
 * several threads at once.
 */
public final class VesselTables implements Serializable {

  /** In the order of publication; the job cards, which go into briefings only, last. */
  private static final List<VesselTable> ALL =
      List.of(
          new DueList(),
          new FleetMonth(),
          new HoursReconciliation(),
          new VesselQueries(),
          new JobCards());

  private final Edition edition;

  /** By vessel, then in the order of publication. */
  private final SortedMap<String, List<List<TableRow>>> rows = new TreeMap<>();

  /**
   * The tables without a vessel.
   *
   * @param knownAt when the last batch was committed that the rows rest on
   */
  public VesselTables(ReportMonth month, Instant knownAt) {
    this.edition = new Edition(month, knownAt);
  }

  /** Lists a vessel; each must be added once only. */
  public VesselTables add(VesselAccount vessel) {
    rows.put(vessel.vessel(), ALL.stream().map(table -> table.rows(vessel, edition)).toList());
    return this;
  }

  /** Lists all vessels of the other tables, which are of the same month and moment. */
  public VesselTables merge(VesselTables other) {
    if (!edition.equals(other.edition)) {
      throw new IllegalArgumentException("tables of one month and moment merge");
    }
    rows.putAll(other.rows);
    return this;
  }

  /** The rows of each table, by vessel. */
  public Map<TableSpec, List<TableRow>> rows() {
    Map<TableSpec, List<TableRow>> tables = new LinkedHashMap<>();
    for (int i = 0; i < ALL.size(); i++) {
      List<TableRow> ofAll = new ArrayList<>();
      for (List<List<TableRow>> vessel : rows.values()) {
        ofAll.addAll(vessel.get(i));
      }
      tables.put(ALL.get(i).spec(), ofAll);
    }
    return Collections.unmodifiableMap(tables);
  }
}
