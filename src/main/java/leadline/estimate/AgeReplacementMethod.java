package leadline.estimate;

import java.util.List;
import leadline.stats.AgeReplacement;

/** The best age to renew a part at, for each row; infinite where waiting for failure is best. */
final class AgeReplacementMethod implements Method {

  @Override
  public String word() {
    return "age-replacement";
  }

  @Override
  public List<String> prints() {
    return List.of("age.");
  }

  @Override
  public String reads() {
    return CostRow.COLUMNS;
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<AgeReplacement> plans =
        CostRow.of(file).stream().map(row -> new AgeReplacement(row.life(), row.costs())).toList();
    return new EstimateResults()
        .numbers("age.t_opt", plans, plan -> plan.optimalAge().orElse(Double.POSITIVE_INFINITY))
        .numbers("age.cost_rate_opt", plans, AgeReplacement::optimalCostRate)
        .numbers("age.cost_rate_run_to_failure", plans, AgeReplacement::costRateUponFailure);
  }
}
