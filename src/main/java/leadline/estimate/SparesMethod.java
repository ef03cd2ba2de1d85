package leadline.estimate;

import java.util.List;
import java.util.Set;
import leadline.stats.Confidence;
import leadline.stats.SparesDemand;

/** How many spares to hold, for each row: the demand comes at a rate that is known. */
final class SparesMethod implements Method {

  @Override
  public String word() {
    return "spares";
  }

  @Override
  public List<String> prints() {
    return List.of("spares.");
  }

  @Override
  public String reads() {
    return "mean, the demand expected until the next delivery";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    file.header().require(Set.of("mean"), Set.of());
    return results(
        file.rows().stream()
            .<SparesDemand>map(row -> new SparesDemand.AtKnownRate(row.positive("mean")))
            .toList(),
        settings);
  }

  static EstimateResults results(List<SparesDemand> demands, EstimateSettings settings) {
    Confidence assurance = settings.assurance();
    return new EstimateResults()
        .numbers("spares.mean", demands, SparesDemand::mean)
        .numbers("spares.hold", demands, demand -> demand.holdingFor(assurance))
        .numbers(
            "spares.assurance",
            demands,
            demand -> demand.sufficiencyOf(demand.holdingFor(assurance)));
  }
}
