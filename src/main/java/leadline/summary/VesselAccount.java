package leadline.summary;

import java.util.List;
import leadline.history.CurrentRecords;
import leadline.history.VesselHistory;
import leadline.problem.Problem;

/**
 * One vessel: its records as they stand, what the history made of them, and the contradictions met.
 */
public record VesselAccount(CurrentRecords records, VesselHistory history, List<Problem> problems) {

  public VesselAccount {
    problems = List.copyOf(problems);
  }

  public String vessel() {
    return records.vessel();
  }
}
