package leadline.estimate;

import java.util.List;
import java.util.Set;
import leadline.stats.AdjustedP;

/** The chances of several tests, adjusted for their number. */
final class AdjustPMethod implements Method {

  @Override
  public String word() {
    return "adjust-p";
  }

  @Override
  public List<String> prints() {
    return List.of("holm.", "bh.");
  }

  @Override
  public String reads() {
    return "p, of each test";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    file.header().require(Set.of("p"), Set.of());
    double[] chances = file.rows().stream().mapToDouble(AdjustPMethod::chance).toArray();
    return new EstimateResults()
        .numbers("holm.p", AdjustedP.holm(chances))
        .numbers("bh.p", AdjustedP.benjaminiHochberg(chances));
  }

  private static double chance(DataRow row) {
    double chance = row.notNegative("p");
    if (chance > 1) {
      throw row.impossible("p", "must be at most 1: " + chance);
    }
    return chance;
  }
}
