package leadline.estimate;

import java.util.List;
import java.util.Set;
import leadline.stats.GammaPoisson;
import leadline.stats.SparesDemand;

/** How many spares to hold, for each row: a gamma distribution says what is known of the rate. */
final class SparesUncertainRateMethod implements Method {

  @Override
  public String word() {
    return "spares-uncertain-rate";
  }

  @Override
  public List<String> prints() {
    return List.of("spares.");
  }

  @Override
  public String reads() {
    return "gamma_shape,gamma_exposure,exposure";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    file.header().require(Set.of("gamma_shape", "gamma_exposure", "exposure"), Set.of());
    return SparesMethod.results(
        file.rows().stream()
            .<SparesDemand>map(
                row ->
                    new SparesDemand.AtUncertainRate(
                        new GammaPoisson(
                            row.positive("gamma_shape"), row.positive("gamma_exposure")),
                        row.positive("exposure")))
            .toList(),
        settings);
  }
}
