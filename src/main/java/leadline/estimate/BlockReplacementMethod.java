package leadline.estimate;

import java.util.List;
import java.util.Optional;
import leadline.stats.BlockReplacement;

/** The best interval to renew a part at, whatever its age; infinite where failure is best. */
final class BlockReplacementMethod implements Method {

  private record Planned(BlockReplacement replacement, Optional<BlockReplacement.Plan> plan) {}

  @Override
  public String word() {
    return "block-replacement";
  }

  @Override
  public List<String> prints() {
    return List.of("block.");
  }

  @Override
  public String reads() {
    return CostRow.COLUMNS;
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<Planned> all =
        CostRow.of(file).stream()
            .map(row -> new BlockReplacement(row.life(), row.costs()))
            .map(replacement -> new Planned(replacement, replacement.optimum()))
            .toList();
    return new EstimateResults()
        .numbers(
            "block.t_opt",
            all,
            planned ->
                planned
                    .plan()
                    .map(BlockReplacement.Plan::interval)
                    .orElse(Double.POSITIVE_INFINITY))
        .numbers(
            "block.cost_rate_opt",
            all,
            planned ->
                planned
                    .plan()
                    .map(BlockReplacement.Plan::costRate)
                    .orElseGet(planned.replacement()::costRateUponFailure))
        .numbers(
            "block.cost_rate_run_to_failure",
            all,
            planned -> planned.replacement().costRateUponFailure());
  }
}
