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
    CurrentRecords records, VesselHistory history, List<Problem> problems, BatchTimes batches) {

  public VesselAccount {
    problems = List.copyOf(problems);
  }

  public String vessel() {
    return records.vessel();
  }
}
