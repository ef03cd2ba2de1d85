package leadline.sample;

import java.util.Optional;
import leadline.fleet.FailureShows;
import leadline.fleet.Part;
import leadline.sample.TrueLife.Cause;
import leadline.sample.TrueLife.Failure;

/**
 * One piece of a part and what it goes through. It fails when the hazard that it has met, by its
 * Weibull distribution and the factors in force, uses up what it was given at the start: an
 * exponential draw.
 */
final class Piece {

  private final Part part;
  private final PartModel model;
  private final int bornDay;
  private final double factor;
  private final boolean shows;

  private double hazardLeft;
  private long age;
  private Optional<Failure> failure = Optional.empty();
  private double harmedAt = Double.POSITIVE_INFINITY;

  /**
   * @param factor of vessel and type, on the hazard
   * @param revelation factor on the chance that a failure shows that may stay unseen
   */
  Piece(Part part, PartModel model, int bornDay, double factor, double revelation, Draw draw) {
    this.part = part;
    this.model = model;
    this.bornDay = bornDay;
    this.factor = factor;
    this.hazardLeft = draw.exponential();
    boolean revealed = draw.chance(revelation * model.revealed());
    this.shows = part.failureShows() == FailureShows.ALWAYS || revealed;
  }

  Part part() {
    return part;
  }

  PartModel model() {
    return model;
  }

  int bornDay() {
    return bornDay;
  }

  /** Tenths of an hour since new. */
  long age() {
    return age;
  }

  Optional<Failure> failure() {
    return failure;
  }

  boolean hasFailed() {
    return failure.isPresent();
  }

  boolean isFailureSeenInService() {
    return failure.isPresent() && shows;
  }

  double wear() {
    return age / 10.0 / model.scale();
  }

  /** The work just done will make it fail after so many hours. */
  void harm(double hoursLeft) {
    harmedAt = age / 10.0 + hoursLeft;
  }

  /** Tenths until a failure takes the item out of service; none where it never will. */
  Optional<Long> tenthsToBreakdown(Fuel fuel) {
    if (!shows || failure.isPresent()) {
      return Optional.empty();
    }
    double failsAt = Math.min(harmedAt, failsAt(fuel));
    return Optional.of(Math.max(1, (long) Math.ceil(failsAt * 10) - age));
  }

  /** Lives on for so many tenths. */
  void run(long tenths, Fuel fuel) {
    long later = age + tenths;
    if (failure.isEmpty()) {
      double failsAt = failsAt(fuel);
      if (Math.min(harmedAt, failsAt) * 10 <= later) {
        failure =
            Optional.of(
                harmedAt < failsAt
                    ? new Failure(harmedAt, Cause.WORKMANSHIP)
                    : new Failure(failsAt, Cause.LIFE));
      } else {
        hazardLeft -= hazard(later / 10.0, fuel);
      }
    }
    age = later;
  }

  /** The age at which it fails if it goes on running. */
  private double failsAt(Fuel fuel) {
    double rate = factor * fuel.factorNow(model);
    double changedAt = (age + fuel.tenthsToChange(model)) / 10.0;
    double untilChange = rate * (unit(changedAt) - unit(age / 10.0));
    if (hazardLeft <= untilChange) {
      return ageAt(unit(age / 10.0) + hazardLeft / rate);
    }
    double later = factor * fuel.factorLater(model);
    return ageAt(unit(changedAt) + (hazardLeft - untilChange) / later);
  }

  /** The hazard met from now to an age. */
  private double hazard(double to, Fuel fuel) {
    double changedAt = Math.min(to, (age + fuel.tenthsToChange(model)) / 10.0);
    return factor
        * (fuel.factorNow(model) * (unit(changedAt) - unit(age / 10.0))
            + fuel.factorLater(model) * (unit(to) - unit(changedAt)));
  }

  private double unit(double hours) {
    return StrictMath.pow(hours / model.scale(), model.shape());
  }

  private double ageAt(double unit) {
    return model.scale() * StrictMath.pow(unit, 1 / model.shape());
  }
}
