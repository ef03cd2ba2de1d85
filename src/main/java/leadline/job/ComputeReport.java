package leadline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leadline.lake.Run;

/** What a compute did. */
record ComputeReport(StepOutcome.Computed outcome) implements StepReport {

  @Override
  public List<String> words() {
    Run run = outcome.run();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Computed %s as run %s on what was known at %s: %s."
            .formatted(run.month(), run.id(), run.knownAt(), rowsByTable(run)));
    run.problems().forEach((kind, count) -> lines.add(problem(kind, count)));
    return lines;
  }

  private static String rowsByTable(Run run) {
    return run.rows().entrySet().stream()
        .map(table -> table.getKey() + " " + Counted.of(table.getValue(), "row"))
        .collect(Collectors.joining(", "));
  }

  private String problem(String kind, long count) {
    return "  %s %s, such as: %s"
        .formatted(Counted.of(count, "problem"), kind, outcome.firstProblems().get(kind));
  }

  @Override
  public Map<String, Object> fields() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("step", "compute");
    fields.put("month", outcome.run().month());
    fields.put("run", outcome.run().id());
    fields.put("known_at", outcome.run().knownAt().toString());
    fields.put("rows", outcome.run().rows());
    fields.put("problems", outcome.run().problems());
    return fields;
  }
}
