package leadline.estimate;

import java.util.List;
import java.util.Set;
import leadline.stats.PoissonRate;

/** Failures counted in an exposure. */
record CountRow(DataRow row, PoissonRate rate) {

  private static final Set<String> COLUMNS = Set.of("failures", "exposure");
  private static final Set<String> OPTIONAL = Set.of("conf", "unit");

  static List<CountRow> of(DataFile file) {
    file.header().require(COLUMNS, OPTIONAL);
    return file.rows().stream()
        .map(
            row ->
                new CountRow(row, new PoissonRate(row.count("failures"), row.positive("exposure"))))
        .toList();
  }
}
