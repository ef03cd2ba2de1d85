package leadline.summary;

import java.io.Serializable;
import java.util.Comparator;
import java.util.Optional;
import leadline.history.Observation;
import leadline.history.PartLife;
import leadline.quantity.RunningHours;
import leadline.stats.Life;

/**
 * What a life of known age tells of the age at failure; many lives may tell the same.
 *
 * @param entry the age beyond which the part must have lived to be known of
 */
record SeenLife(Kind kind, RunningHours entry, RunningHours workedAt, RunningHours failedBy)
    implements Comparable<SeenLife>, Serializable {

  enum Kind {
    EXACT,
    INTERVAL,
    RIGHT_CENSORED,
    REJECTED;

    boolean isOf(SeenLife life) {
      return life.kind == this;
    }
  }

  private static final Comparator<SeenLife> ORDER =
      Comparator.comparing(SeenLife::entry)
          .thenComparing(SeenLife::workedAt)
          .thenComparing(SeenLife::failedBy)
          .thenComparing(SeenLife::kind);

  /** None where the life has no age. */
  static Optional<SeenLife> of(PartLife life) {
    return life.observation()
        .workedAt()
        .flatMap(
            worked ->
                kindOf(life.observation())
                    .map(
                        kind ->
                            new SeenLife(
                                kind,
                                life.entry(),
                                worked,
                                life.observation().failedBy().orElse(RunningHours.ZERO))));
  }

  private static Optional<Kind> kindOf(Observation observation) {
    if (observation instanceof Observation.Exact) {
      return Optional.of(Kind.EXACT);
    } else if (observation instanceof Observation.Within) {
      return Optional.of(Kind.INTERVAL);
    } else if (observation instanceof Observation.WorkingAt) {
      return Optional.of(Kind.RIGHT_CENSORED);
    }
    return observation instanceof Observation.RejectedAt
        ? Optional.of(Kind.REJECTED)
        : Optional.empty();
  }

  boolean isFailure() {
    return kind == Kind.EXACT || kind == Kind.INTERVAL;
  }

  /** Whether it is known only because the part lived beyond an age. */
  boolean isEnteredLate() {
    return entry.isAbove(RunningHours.ZERO);
  }

  /** Whether it tells of any age lived through after entry, or of a failure. */
  boolean tellsAnything() {
    return isFailure() ? failedBy.isAbove(entry) : workedAt.isAbove(entry);
  }

  /** The greatest age of which it tells. */
  RunningHours lastAge() {
    return isFailure() ? failedBy : workedAt;
  }

  /** For fits; of a life that tells anything. */
  Life life() {
    Life fromNew =
        switch (kind) {
          case EXACT -> Life.failedAt(failedBy.hours());
          case INTERVAL -> Life.failedBetween(workedAt.hours(), failedBy.hours());
          case RIGHT_CENSORED, REJECTED -> Life.outlived(workedAt.hours());
        };
    return isEnteredLate() ? fromNew.enteredAt(entry.hours()) : fromNew;
  }

  @Override
  public int compareTo(SeenLife other) {
    return ORDER.compare(this, other);
  }
}
