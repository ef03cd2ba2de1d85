package leadline.stats;

/** A bound on one side, where the data support no estimate. Ages are in the caller's unit. */
public sealed interface OneSidedLimit {

  /** At least this share outlives the age. */
  record SurvivalAtLeast(double age, double share) implements OneSidedLimit {}

  /** At most this share outlives the age. */
  record SurvivalAtMost(double age, double share) implements OneSidedLimit {}

  /** The scale is at least this. */
  record ScaleAtLeast(double scale) implements OneSidedLimit {}

  /** The scale is at most this. */
  record ScaleAtMost(double scale) implements OneSidedLimit {}
}
