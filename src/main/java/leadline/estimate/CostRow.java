package leadline.estimate;

import java.util.List;
import java.util.Set;
import leadline.stats.AgeingLife;
import leadline.stats.ReplacementCosts;

/** A life's distribution and what its renewals cost. */
record CostRow(AgeingLife life, ReplacementCosts costs) {

  static final String COLUMNS = "shape,scale or mu,sigma; cost_preventive,cost_failure";

  private static final String PREVENTIVE = "cost_preventive";
  private static final String FAILURE = "cost_failure";

  static List<CostRow> of(DataFile file) {
    if (file.header().has("mu")) {
      file.header().require(Set.of("mu", "sigma", PREVENTIVE, FAILURE), Set.of());
      return file.rows().stream().map(row -> new CostRow(lognormal(row), costs(row))).toList();
    }
    file.header().require(Set.of("shape", "scale", PREVENTIVE, FAILURE), Set.of());
    return file.rows().stream().map(row -> new CostRow(weibull(row), costs(row))).toList();
  }

  static AgeingLife weibull(DataRow row) {
    return new AgeingLife.Weibull(row.positive("shape"), row.positive("scale"));
  }

  private static AgeingLife lognormal(DataRow row) {
    return new AgeingLife.Lognormal(row.number("mu"), row.positive("sigma"));
  }

  private static ReplacementCosts costs(DataRow row) {
    return new ReplacementCosts(row.positive(PREVENTIVE), row.positive(FAILURE));
  }
}
