package leadline.lake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Counts the rows of every table of committed runs. */
final class RunRecount {

  private static final String RUN = "run";

  private final Lake lake;
  private final Map<String, Run> runs = new LinkedHashMap<>();
  private final Counts<RowsOfRun> counts = new Counts<>();

  private record RowsOfRun(LakeTable table, String run) {}

  RunRecount(Lake lake, List<Run> runs) {
    this.lake = lake;
    runs.forEach(run -> this.runs.put(run.id(), run));
  }

  List<Disagreement> disagreements() {
    runs.values().forEach(this::tell);
    tables().forEach(this::find);
    List<Disagreement> disagreements = new ArrayList<>();
    counts.forEachUnlike((rows, told, found) -> disagreements.add(disagreement(rows, told, found)));
    return disagreements;
  }

  private Disagreement disagreement(RowsOfRun rows, long told, long found) {
    Run run = Objects.requireNonNull(runs.get(rows.run()));
    return new Disagreement.RowsOfRun(
        run.id(), run.month(), run.knownAt(), rows.table(), told, found);
  }

  private void tell(Run run) {
    run.rows().forEach((table, rows) -> counts.tell(rowsOf(run, table), rows));
    counts.tell(
        new RowsOfRun(LakeTable.PROBLEMS, run.id()),
        run.problems().values().stream().mapToLong(Long::longValue).sum());
  }

  private static RowsOfRun rowsOf(Run run, String table) {
    return new RowsOfRun(new LakeTable(LakeTable.RESULTS, table), run.id());
  }

  private Set<LakeTable> tables() {
    return Stream.concat(
            Stream.of(LakeTable.PROBLEMS),
            runs.values().stream()
                .flatMap(run -> run.rows().keySet().stream())
                .map(table -> new LakeTable(LakeTable.RESULTS, table)))
        .collect(Collectors.toSet());
  }

  /** Rows of runs that were never committed are nobody's. */
  private void find(LakeTable name) {
    lake.find(name)
        .ifPresent(
            table ->
                Stored.forEach(
                    table,
                    List.of(RUN),
                    row -> {
                      String run = Stored.text(row, RUN);
                      if (runs.containsKey(run)) {
                        counts.find(new RowsOfRun(name, run));
                      }
                    }));
  }
}
