package leadline.history;

import java.util.Optional;
import java.util.function.Function;
import leadline.fleet.FailureShows;
import leadline.fleet.Part;
import leadline.fleet.Renewal;
import leadline.quantity.RunningHours;

/**
 * One part in one item, from life to life. Moments are hours of the item's own clock; the moment a
 * part was new lies before zero where it is older than the records.
 */
final class PartLedger {

  private enum Stage {
    FIRST_LIFE,
    /** It failed and was kept: until renewed it has no further life to a first failure. */
    AFTER_FAILURE
  }

  /** A life's end, with what it tells. */
  record EndOfLife(
      LifeOrigin origin, RunningHours entry, Observation observation, LifeEnd endedBy) {}

  private final Part part;
  private final RunningHours oldestUnopened;
  private Stage stage = Stage.FIRST_LIFE;
  private LifeOrigin origin;
  private PartAge age;
  private RunningHours seenFrom;
  private Optional<RunningHours> verifiedAt = Optional.empty();

  private PartLedger(
      Part part,
      RunningHours oldestUnopened,
      LifeOrigin origin,
      PartAge age,
      RunningHours seenFrom) {
    this.part = part;
    this.oldestUnopened = oldestUnopened;
    this.origin = origin;
    this.age = age;
    this.seenFrom = seenFrom;
  }

  /**
   * A part first seen now, of the age of its item if that is known since new.
   *
   * @param oldestUnopened the age up to which it is unlikely to have been opened before
   */
  static PartLedger firstSeen(
      Part part, RunningHours oldestUnopened, RunningHours now, Optional<RunningHours> age) {
    return new PartLedger(
        part,
        oldestUnopened,
        age.isPresent() ? LifeOrigin.NEW : LifeOrigin.UNKNOWN,
        new PartAge(age.map(now::minus)),
        now);
  }

  Part part() {
    return part;
  }

  /** The age of the piece now in the item. */
  PartAge age() {
    return age;
  }

  /** The moment on the item's clock when the piece came, or came into sight. */
  RunningHours seenFrom() {
    return seenFrom;
  }

  /** The age at which the piece was last shown to work. */
  Optional<RunningHours> workedAt() {
    return verifiedAt.flatMap(age::at);
  }

  boolean isKeptFailed() {
    return stage == Stage.AFTER_FAILURE;
  }

  /**
   * Takes the ship's word for the age of a part of unknown origin. A part that may fail unseen and
   * was of some age when first on record has survived openings that are not: counted from new, such
   * lives would seem longer than they are.
   */
  void dateFrom(RunningHours hoursSinceNew, RunningHours now) {
    if (!age.isKnown()) {
      age.learn(hoursSinceNew, now);
      boolean mayHaveBeenOpened =
          part.failureShows() == FailureShows.MAY_STAY_UNSEEN
              && age.at(seenFrom).filter(atFirst -> atFirst.isAbove(oldestUnopened)).isPresent();
      origin = mayHaveBeenOpened ? LifeOrigin.BEFORE_RECORDS : LifeOrigin.HOURS_SINCE_NEW;
    }
  }

  /** Takes what a visit proves; a failure ends the life. */
  Optional<EndOfLife> witness(Evidence evidence, RunningHours now) {
    return switch (evidence) {
      case FAILED_IN_SERVICE -> fail(now, Optional.of(now));
      case FOUND_FAILED ->
          fail(now, part.failureShows() == FailureShows.ALWAYS ? Optional.of(now) : verifiedAt);
      case WORKING, WORKING_BEYOND_LIMIT -> {
        verifiedAt = Optional.of(now);
        yield Optional.empty();
      }
      case NOTHING -> Optional.empty();
    };
  }

  /** Ends the life that still runs, if any, for what the visit proved, and begins the next. */
  Optional<EndOfLife> renew(Evidence evidence, RunningHours now) {
    Optional<EndOfLife> ended =
        switch (evidence) {
          case WORKING_BEYOND_LIMIT ->
              part.renewal() == Renewal.ON_CONDITION
                  ? end(aged(now, Observation.RejectedAt::new), LifeEnd.REJECTED)
                  : stop(LifeEnd.RENEWED, now);
          case WORKING -> stop(LifeEnd.RENEWED, now);
          case NOTHING, FOUND_FAILED, FAILED_IN_SERVICE -> stop(LifeEnd.REPLACED_UNOPENED, now);
        };
    stage = Stage.FIRST_LIFE;
    origin = LifeOrigin.RENEWED;
    age = new PartAge(Optional.of(now));
    seenFrom = now;
    verifiedAt = Optional.empty();
    return ended;
  }

  /** Ends the life without a failure: a part that may fail unseen was last known to work before. */
  Optional<EndOfLife> stop(LifeEnd endedBy, RunningHours now) {
    return end(
        switch (part.failureShows()) {
          case ALWAYS -> aged(now, Observation.WorkingAt::new);
          case MAY_STAY_UNSEEN ->
              age.isKnown() && origin != LifeOrigin.BEFORE_RECORDS
                  ? new Observation.WorkingAt(ageLastVerified(verifiedAt))
                  : new Observation.NoAge();
        },
        endedBy);
  }

  private Optional<EndOfLife> fail(RunningHours now, Optional<RunningHours> lastWorking) {
    RunningHours lower = ageLastVerified(lastWorking);
    Observation observation =
        aged(
            now,
            age ->
                age.isAbove(lower)
                    ? new Observation.Within(lower, age)
                    : new Observation.Exact(age));
    Optional<EndOfLife> ended = end(observation, LifeEnd.FAILED);
    stage = Stage.AFTER_FAILURE;
    return ended;
  }

  private Optional<EndOfLife> end(Observation observation, LifeEnd endedBy) {
    return stage == Stage.FIRST_LIFE
        ? Optional.of(new EndOfLife(origin, entry(), observation, endedBy))
        : Optional.empty();
  }

  private Observation aged(RunningHours now, Function<RunningHours, Observation> observation) {
    return age.at(now)
        .filter(known -> origin != LifeOrigin.BEFORE_RECORDS)
        .map(observation)
        .orElseGet(Observation.NoAge::new);
  }

  /** Zero where the part was not verified since new, or its age is not known. */
  private RunningHours ageLastVerified(Optional<RunningHours> verified) {
    return verified.flatMap(age::at).orElse(RunningHours.ZERO);
  }

  /**
   * The age from which the life is known. A part that may fail unseen does not leave the records by
   * failing, so that for it even a stated age is no delayed entry.
   */
  private RunningHours entry() {
    return part.failureShows() == FailureShows.ALWAYS && origin == LifeOrigin.HOURS_SINCE_NEW
        ? age.at(seenFrom).orElse(RunningHours.ZERO)
        : RunningHours.ZERO;
  }
}
