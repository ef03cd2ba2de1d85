package leadline.history;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.OverhaulId;
import leadline.fleet.Part;
import leadline.quantity.RunningHours;

/**
 * The piece of a part in an item that is fitted as observation ends.
 *
 * @param age hours since new; none where the origin is unknown
 * @param seenFrom when the piece was renewed, or its item came into sight
 * @param seen hours that the item ran since then
 * @param workedAt the age at which it was last known to work; none where its age is unknown, or it
 *     was not shown to work since new
 * @param keptFailed whether it was found failed and not renewed since
 * @param laps how often it was lapped, on record, since {@code seenFrom}
 * @param last what was last written of the part in this item
 */
public record PartStanding(
    Part part,
    Optional<RunningHours> age,
    Instant seenFrom,
    RunningHours seen,
    Optional<RunningHours> workedAt,
    boolean keptFailed,
    int laps,
    Optional<LastFinding> last) {

  /**
   * What was last written of the part.
   *
   * @param found empty where no condition is stated
   * @param actions empty where the ship wrote none
   */
  public record LastFinding(
      OverhaulId overhaul,
      Instant at,
      Inspection inspection,
      Set<FoundWord> found,
      Set<Action> actions) {

    public LastFinding {
      found = Set.copyOf(found);
      actions = Set.copyOf(actions);
    }
  }
}
