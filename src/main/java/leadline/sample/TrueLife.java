package leadline.sample;

import java.time.LocalDate;
import java.util.Optional;
import leadline.fleet.MachineId;
import leadline.fleet.Written;
import leadline.quantity.RunningHours;

/**
 * What really happened to one part, while its item's overhauls were on record or later.
 *
 * @param position where it was last, as {@code @3/2}, or {@code shelf}
 * @param item its item, by serial, or by position where the component has no serials
 * @param number 1 for the part's first life in the item that ended on record or did not end
 * @param bornOn the day it was new
 * @param endedAt its age when it left or when the time of the records ended
 * @param failure none for a part that was working when it left
 */
public record TrueLife(
    MachineId machine,
    String component,
    String position,
    String item,
    String part,
    int number,
    LocalDate bornOn,
    RunningHours endedAt,
    Optional<Failure> failure,
    End end) {

  /**
   * The part lost its function.
   *
   * @param age hours since new
   */
  public record Failure(double age, Cause cause) {}

  /** Why a part failed. */
  public enum Cause implements Written {
    /** By its distribution. */
    LIFE,
    /** By the overhaul before. */
    WORKMANSHIP
  }

  /** How a part left. */
  public enum End implements Written {
    FAILED_IN_SERVICE,
    FOUND_FAILED,
    /** Working, but found beyond its limit and renewed for that. */
    REJECTED,
    /** Found working, and renewed as a routine or to be safe. */
    RENEWED,
    RENEWED_UNOPENED,
    STILL_FITTED,
    ON_SHELF
  }
}
