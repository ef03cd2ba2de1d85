package leadline.history;

import java.io.Serializable;
import java.util.Optional;
import leadline.quantity.RunningHours;

/** What a life says of the age at failure. Ages are hours since new. */
public sealed interface Observation extends Serializable {

  /** The kind of observation, in the words of the published tables. */
  String word();

  /** The greatest age at which the part is known to have worked; none without an age. */
  default Optional<RunningHours> workedAt() {
    return Optional.empty();
  }

  /** The least age by which the part is known to have failed; none where it is not. */
  default Optional<RunningHours> failedBy() {
    return Optional.empty();
  }

  /** Failed at this age. */
  record Exact(RunningHours age) implements Observation {
    @Override
    public String word() {
      return "exact";
    }

    @Override
    public Optional<RunningHours> workedAt() {
      return Optional.of(age);
    }

    @Override
    public Optional<RunningHours> failedBy() {
      return Optional.of(age);
    }
  }

  /** Failed at an age in {@code (lower, upper]}. */
  record Within(RunningHours lower, RunningHours upper) implements Observation {
    public Within {
      if (!upper.isAbove(lower)) {
        throw new IllegalArgumentException(
            "an interval ends after its start: " + lower + ", " + upper);
      }
    }

    @Override
    public String word() {
      return "interval";
    }

    @Override
    public Optional<RunningHours> workedAt() {
      return Optional.of(lower);
    }

    @Override
    public Optional<RunningHours> failedBy() {
      return Optional.of(upper);
    }
  }

  /** Working at this age; nothing known after it. */
  record WorkingAt(RunningHours age) implements Observation {
    @Override
    public String word() {
      return "right-censored";
    }

    @Override
    public Optional<RunningHours> workedAt() {
      return Optional.of(age);
    }
  }

  /** Working at this age, and taken out for its condition: a second endpoint. */
  record RejectedAt(RunningHours age) implements Observation {
    @Override
    public String word() {
      return "rejected";
    }

    @Override
    public Optional<RunningHours> workedAt() {
      return Optional.of(age);
    }
  }

  /** The origin is unknown: the life has no age. */
  record NoAge() implements Observation {
    @Override
    public String word() {
      return "no-age";
    }
  }
}
