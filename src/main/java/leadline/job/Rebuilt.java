package leadline.job;

import java.io.Serializable;
import java.time.Instant;
import java.util.SortedMap;
import java.util.TreeMap;
import leadline.fleet.Catalogue;
import leadline.fleet.RecordKind;
import leadline.history.Census;
import leadline.lake.VesselFiles;
import leadline.quantity.ReportMonth;
import leadline.summary.MonthlySummary;
import leadline.summary.VesselTables;

/**
 * What was rebuilt of some vessels: the counts for the tables, and the files written on the way.
 *
 * @param machinesObserved machines observed before the cut-off
 */
record Rebuilt(
    MonthlySummary summary,
    VesselTables vesselTables,
    Census census,
    ProblemCounts problemCounts,
    long machinesObserved,
    VesselFiles files)
    implements Serializable {

  static Rebuilt none(Catalogue catalogue, ReportMonth month, Instant knownAt) {
    return new Rebuilt(
        MonthlySummary.start(catalogue, month),
        new VesselTables(month, knownAt),
        Census.EMPTY,
        ProblemCounts.NONE,
        0,
        VesselFiles.NONE);
  }

  Rebuilt merge(Rebuilt other) {
    return new Rebuilt(
        summary.merge(other.summary),
        vesselTables.merge(other.vesselTables),
        census.plus(other.census),
        problemCounts.plus(other.problemCounts),
        machinesObserved + other.machinesObserved,
        files.and(other.files));
  }

  /** The census under the names {@code KIND.STATE}. */
  SortedMap<String, Long> censusByKind() {
    SortedMap<String, Long> counts = new TreeMap<>();
    for (RecordKind kind : RecordKind.values()) {
      Census.Count count = census.of(kind);
      counts.put(kind.word() + ".current", count.current());
      counts.put(kind.word() + ".duplicate", count.duplicate());
      counts.put(kind.word() + ".superseded", count.superseded());
      counts.put(kind.word() + ".withdrawn", count.withdrawn());
    }
    return counts;
  }
}
