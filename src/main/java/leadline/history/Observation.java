package leadline.history;

import java.io.Serializable;
import leadline.quantity.RunningHours;

/** What a life says of the age at failure. Ages are hours since new. */
public sealed interface Observation extends Serializable {

  /** Failed at this age. */
  record Exact(RunningHours age) implements Observation {}

  /** Failed at an age in {@code (lower, upper]}. */
  record Within(RunningHours lower, RunningHours upper) implements Observation {
    public Within {
      if (!upper.isAbove(lower)) {
        throw new IllegalArgumentException(
            "an interval ends after its start: " + lower + ", " + upper);
      }
    }
  }

  /** Working at this age; nothing known after it. */
  record WorkingAt(RunningHours age) implements Observation {}

  /** Working at this age, and taken out for its condition: a second endpoint. */
  record RejectedAt(RunningHours age) implements Observation {}

  /** The origin is unknown: the life has no age. */
  record NoAge() implements Observation {}
}
