package leadline.publish;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadline.quantity.ReportMonth;

/** An invented run with its account. */
final class SampleIssue {

  static final Instant KNOWN_AT = Instant.parse("2025-01-10T12:00:00Z");

  private SampleIssue() {}

  static Issue of(String run, String month, Standing standing) {
    return new Issue(
        manifest(run, month),
        standing,
        List.of(SampleTable.table()),
        List.of("Keep clear of the spray."));
  }

  static RunManifest manifest(String run, String month) {
    Map<String, Double> durations = new LinkedHashMap<>();
    durations.put("read", 1.25);
    durations.put("count", 0.5);
    return new RunManifest(
        run,
        ReportMonth.parse(month),
        KNOWN_AT,
        "0.1.0",
        "ab".repeat(32),
        List.of(
            new RunManifest.Batch(
                "batch-1",
                Instant.parse("2025-01-10T11:59:58.5Z"),
                List.of(
                    new RunManifest.InputFile(
                        "kittiwake/hours.csv", "cd".repeat(32), 12, 10, 2, 1)))),
        Map.of("hours", new RunManifest.Census(7, 1, 1, 1)),
        Map.of("impossible-reading", 3L),
        durations);
  }
}
