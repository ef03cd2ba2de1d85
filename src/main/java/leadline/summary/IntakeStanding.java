package leadline.summary;

import leadline.fleet.Written;

/** Whether the rows of a batch count. */
public enum IntakeStanding implements Written {
  COUNTS,
  /** The batch was taken back. */
  WITHDRAWN,
  /** Its files were read again; the rows that were read then count in its place. */
  READ_AGAIN
}
