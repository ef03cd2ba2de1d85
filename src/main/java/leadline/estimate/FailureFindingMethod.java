package leadline.estimate;

import java.util.List;
import java.util.Set;
import leadline.stats.HiddenFailure;

/** How long a function is lost unseen that is tested at intervals, for each row. */
final class FailureFindingMethod implements Method {

  private static final String INTERVAL = "interval";
  private static final String TESTED = "tested";
  private static final String REQUIRED = "required_unavailability";

  @Override
  public String word() {
    return "failure-finding";
  }

  @Override
  public List<String> prints() {
    return List.of("hidden.");
  }

  @Override
  public String reads() {
    return "shape,scale,interval[,tested][,required_unavailability]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    file.header().require(Set.of("shape", "scale", INTERVAL), Set.of(TESTED, REQUIRED));
    EstimateResults results =
        new EstimateResults()
            .numbers(
                "hidden.unavailability",
                file.rows(),
                row -> function(row).unavailability(row.positive(INTERVAL)));
    if (file.header().has(REQUIRED)) {
      results.numbers(
          "hidden.interval_required",
          file.rows(),
          row -> function(row).intervalFor(share(row, REQUIRED)));
    }
    return results;
  }

  private static HiddenFailure function(DataRow row) {
    double tested = row.states(TESTED) ? row.positive(TESTED) : 1;
    if (tested > 1) {
      throw row.impossible(TESTED, "must be at most 1: " + tested);
    }
    return new HiddenFailure(CostRow.weibull(row), tested);
  }

  private static double share(DataRow row, String column) {
    double share = row.positive(column);
    if (share >= 1) {
      throw row.impossible(column, "must be less than 1: " + share);
    }
    return share;
  }
}
