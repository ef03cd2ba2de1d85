package leadline.summary;

import java.util.List;
import leadline.history.CurrentRecords;
import leadline.history.VesselHistory;
import leadline.origin.BatchTimes;
import leadline.problem.Problem;

/**
 * One vessel: its records as they stand, what the history made of them, and the contradictions met.
 *
 * @param batches when the batches were committed that brought the records
 */
public record VesselAccount(
    CurrentRecords records,
    VesselHistory history,
    List<Problem> problems,
    BatchTimes batches) {

  public VesselAccount {
    problems = List.copyOf(problems);
  }

  /** Contradictions, each counted once: by what it is and the record that it is about. */
  public long questions() {
    return problems.stream()
        .map(problem -> List.of(problem.kind(), problem.record()))
        .distinct()
        .count();
  }

  public String vessel() {
    return records.vessel();
  }
}
