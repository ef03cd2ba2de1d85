package leadline.history;

import java.util.Optional;
import java.util.Set;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.Renewal;
import leadline.quantity.RunningHours;

/**
 * One part at one visit.
 *
 * @param age hours since new at the removal; none where the origin is unknown
 * @param actions none where the ship wrote none
 */
public record PartState(
    Part part, Inspection inspection, Optional<RunningHours> age, Set<Action> actions) {

  public PartState {
    actions = Set.copyOf(actions);
  }

  public boolean isRenewed() {
    return actions.contains(Action.RENEWED);
  }

  /** What it was found like when it was opened; none where it was not. */
  public Set<FoundWord> found() {
    return inspection instanceof Inspection.Opened opened ? opened.found() : Set.of();
  }

  public boolean isFoundFailed() {
    return inspection instanceof Inspection.Opened opened && opened.verdict() == Condition.FAILED;
  }

  /** Renewed on condition though still working. */
  public boolean isRejected() {
    return isRenewed()
        && part.renewal() == Renewal.ON_CONDITION
        && inspection instanceof Inspection.Opened opened
        && opened.verdict() == Condition.BEYOND_LIMIT;
  }
}
