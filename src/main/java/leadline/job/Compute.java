package leadline.job;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leadline.lake.Engine;
import leadline.lake.ExportRecords;
import leadline.lake.IntakeRecords;
import leadline.lake.KnownAt;
import leadline.lake.Lake;
import leadline.lake.RecordFiles;
import leadline.lake.Results;
import leadline.lake.Run;
import leadline.lake.VesselWriter;
import leadline.publish.Boundary;
import leadline.quantity.ReportMonth;
import leadline.summary.LifeGroup;
import leadline.summary.LifeRows;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/** Records to lives to summary tables, as one run. The writer's lock must be held. */
final class Compute {

  private final Lake lake;
  private final Rules rules;
  private final Clock clock;
  private final Boundary boundary;

  Compute(Lake lake, Rules rules, Clock clock, Boundary boundary) {
    this.lake = lake;
    this.rules = rules;
    this.clock = clock;
    this.boundary = boundary;
  }

  StepOutcome.Computed month(ReportMonth month, Optional<Instant> askedKnownAt, Engine engine) {
    Instant begun = clock.instant();
    KnownAt knownAt = knownAt(askedKnownAt);
    String run = Identifiers.next(clock);
    Rebuilt fleet = rebuild(month, knownAt, run, engine);
    if (fleet.machinesObserved() == 0) {
      throw new UnusableRequest(nothingObserved(month));
    }
    Instant rebuilt = clock.instant();
    List<LifeRows> lives = engine.each(fleet.summary().lifeGroups(knownAt.at()), LifeGroup::rows);
    Map<TableSpec, List<TableRow>> tables =
        new LinkedHashMap<>(fleet.summary().rows(knownAt.at(), lives));
    tables.putAll(fleet.vesselTables().rows());
    tables.putAll(new IntakeRecords(lake, knownAt).tables(month).rows());
    SortedMap<String, Long> rows = append(run, fleet, tables);
    SortedMap<String, Long> milliseconds = new TreeMap<>();
    milliseconds.put("rebuild", elapsed(begun, rebuilt));
    milliseconds.put("tables", elapsed(rebuilt, clock.instant()));
    Run computed =
        new Run(
            run,
            month.toString(),
            knownAt.at(),
            rules.digest(),
            ProgramVersion.current(),
            clock.instant(),
            fleet.censusByKind(),
            fleet.problemCounts().byKind(),
            rows,
            milliseconds);
    Run committed = lake.runs().commit(computed);
    boundary.reached("run committed");
    return new StepOutcome.Computed(committed, fleet.problemCounts().examples());
  }

  /** Milliseconds; none where the clock was set back meanwhile. */
  private static long elapsed(Instant from, Instant to) {
    return Math.max(0, Duration.between(from, to).toMillis());
  }

  private KnownAt knownAt(Optional<Instant> asked) {
    return lake.batches()
        .knownAt(asked.orElse(Instant.MAX))
        .orElseThrow(
            () ->
                new UnusableRequest(
                    asked
                        .map(at -> "No batch was committed by " + at + ": name a later moment.")
                        .orElse("The lake holds no batch yet: ingest exports first.")));
  }

  private Rebuilt rebuild(ReportMonth month, KnownAt knownAt, String run, Engine engine) {
    return new RecordFiles(lake, knownAt)
            .byPool(rules.exchange(), engine)
            .mapPartitions(
                new RebuildVessels(
                    rules,
                    month,
                    knownAt.times(),
                    ExportRecords.of(lake, knownAt),
                    new VesselWriter(lake, run)))
            .collect()
            .stream()
            .reduce(Rebuilt.none(rules.catalogue(), month, knownAt.at()), Rebuilt::merge);
  }

  private SortedMap<String, Long> append(
      String run, Rebuilt fleet, Map<TableSpec, List<TableRow>> tables) {
    lake.append(fleet.files(), boundary::reached);
    SortedMap<String, Long> counts = new TreeMap<>();
    tables.forEach(
        (spec, rows) -> {
          new Results(lake).append(run, spec, rows);
          boundary.reached(spec.name() + " appended");
          counts.put(spec.name(), (long) rows.size());
        });
    return counts;
  }

  private static String nothingObserved(ReportMonth month) {
    return "No machine was observed by the end of "
        + month
        + ": name a later month, or ingest the machines and hours that are missing.";
  }
}
