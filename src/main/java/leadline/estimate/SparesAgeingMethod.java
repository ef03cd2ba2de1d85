package leadline.estimate;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import leadline.stats.SparesDemand;

/** How many spares to hold for the ageing parts of all rows together. */
final class SparesAgeingMethod implements Method {

  /** More would not be parts of one store. */
  private static final long MOST_PARTS = 100_000;

  @Override
  public String word() {
    return "spares-ageing";
  }

  @Override
  public List<String> prints() {
    return List.of("spares.");
  }

  @Override
  public String reads() {
    return "shape,scale,age,ahead,weight";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    file.header().require(Set.of("shape", "scale", "age", "ahead", "weight"), Set.of());
    List<Double> chances = file.rows().stream().flatMap(row -> chances(row).stream()).toList();
    if (chances.isEmpty()) {
      throw file.infeasible("weight", "there is no part");
    }
    return SparesMethod.results(List.of(new SparesDemand.OfAgeingParts(chances)), settings);
  }

  private static List<Double> chances(DataRow row) {
    if (row.count("weight") > MOST_PARTS) {
      throw row.impossible("weight", "more than " + MOST_PARTS + " parts");
    }
    double chance =
        SparesDemand.OfAgeingParts.chanceToFail(
            CostRow.weibull(row), row.notNegative("age"), row.notNegative("ahead"));
    return Collections.nCopies((int) row.count("weight"), chance);
  }
}
