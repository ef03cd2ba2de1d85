package leadline.job;

import java.util.List;
import java.util.Map;
import leadline.publish.JsonLine;

/** A step's outcome for people and for schedulers. */
public sealed interface StepReport
    permits IngestReport, WithdrawReport, ComputeReport, PublishReport, TidyReport {

  static StepReport of(StepOutcome outcome) {
    if (outcome instanceof StepOutcome.Ingested ingested) {
      return new IngestReport(ingested);
    } else if (outcome instanceof StepOutcome.Withdrawn withdrawn) {
      return new WithdrawReport(withdrawn);
    } else if (outcome instanceof StepOutcome.Computed computed) {
      return new ComputeReport(computed);
    } else if (outcome instanceof StepOutcome.Published published) {
      return new PublishReport(published);
    } else if (outcome instanceof StepOutcome.Tidied tidied) {
      return new TidyReport(tidied);
    }
    throw new IllegalStateException("an outcome of an unknown kind: " + outcome);
  }

  /** All outcomes as one line of JSON. */
  static String json(List<StepOutcome> outcomes) {
    return JsonLine.of(
        Map.of("steps", outcomes.stream().map(StepReport::of).map(StepReport::fields).toList()));
  }

  /** What was done, for standard output. */
  List<String> words();

  /** What someone should mend, for standard error. */
  default List<String> warnings() {
    return List.of();
  }

  /** What was done, as a JSON object's members. */
  Map<String, Object> fields();
}
