package leadline.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a publish did. */
record PublishReport(StepOutcome.Published outcome) implements StepReport {

  @Override
  public List<String> words() {
    List<String> lines = new ArrayList<>(outcome.words());
    lines.add("");
    outcome.links().forEach(link -> lines.add("Published: " + link));
    return lines;
  }

  @Override
  public Map<String, Object> fields() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("step", "publish");
    fields.put("month", outcome.run().month());
    fields.put("run", outcome.run().id());
    fields.put("known_at", outcome.run().knownAt().toString());
    fields.put("folders", outcome.links().stream().map(Path::toString).toList());
    return fields;
  }
}
