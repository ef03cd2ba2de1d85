package leadline.stats;

import java.util.Optional;
import leadline.stats.FitOutcome.NoFiniteMaximum;
import leadline.stats.FitOutcome.Reason;
import leadline.stats.LifeData.Alike;

/**
 * Whether the likelihood of lives has a highest point. It is concave in shape and offset, so it has
 * one unless it never falls in some direction, or is highest at a shape of 0. A direction with
 * rising shape is one in which all ends are gathered at one age, and must leave each life possible;
 * a shape of 0 is only possible without exact ages and finite intervals. Source: Rockafellar 1970,
 * Convex Analysis, theorem 27.1. With delayed entry the same reasons suffice, but are not all.
 *
 * <p>The same holds of the gamma distribution, whose likelihood need not be concave: ends gathered
 * at one age leave each life the most that any distribution can; and where those found failed were
 * opened no later, in mean log age, than the others, Jensen's inequality puts any distribution with
 * a log-concave failure and survival in log age below one with the same failure at every age, a
 * shape of 0.
 */
final class Existence {

  private Existence() {}

  /** The outcome without a highest point. */
  static <F> FitOutcome<F> without(Reason reason, LifeData data) {
    return new NoFiniteMaximum<>(reason, confidence -> SurvivalBound.of(data, confidence));
  }

  /** Why there is no highest point; empty if none of the reasons holds. */
  static Optional<Reason> reasonAgainst(LifeData data) {
    if (data.failures() == 0) {
      return Optional.of(Reason.NO_FAILURE);
    }
    if (data.exposure(1) == 0) {
      return Optional.of(Reason.NO_SURVIVAL);
    }
    double latestAlive = 0;
    double earliestEnd = Double.POSITIVE_INFINITY;
    for (Alike alike : data.lives()) {
      latestAlive = Math.max(latestAlive, alike.life().lower());
      earliestEnd = Math.min(earliestEnd, alike.life().upper());
    }
    if (latestAlive < earliestEnd) {
      return Optional.of(Reason.ALL_AT_ONE_AGE);
    }
    if (latestAlive == earliestEnd) {
      return Optional.of(
          isOneInspection(data, latestAlive) ? Reason.ONE_INSPECTION_AGE : Reason.ALL_AT_ONE_AGE);
    }
    return isHighestAtNoShape(data) ? Optional.of(Reason.NO_RISE_WITH_AGE) : Optional.empty();
  }

  /** Of each life no more is known than whether it outlived the age, if anything. */
  private static boolean isOneInspection(LifeData data, double age) {
    return data.lives().stream()
        .map(Alike::life)
        .allMatch(
            life ->
                life.lower() == 0
                    ? life.upper() == age || life instanceof Life.Outlived
                    : life.lower() == age && life instanceof Life.Outlived);
  }

  /** At a shape of 0 the slope by shape has the sign of this difference of mean log ages. */
  private static boolean isHighestAtNoShape(LifeData data) {
    double ended = 0;
    double logAgesOfEnded = 0;
    double alive = 0;
    double logAgesOfAlive = 0;
    for (Alike alike : data.lives()) {
      Life life = alike.life();
      if (life.entry() > 0 || (alike.failed() && life.lower() > 0)) {
        return false;
      }
      if (alike.failed()) {
        ended += alike.weight();
        logAgesOfEnded += alike.weight() * Math.log(life.upper());
      } else if (life.lower() > 0) {
        alive += alike.weight();
        logAgesOfAlive += alike.weight() * Math.log(life.lower());
      }
    }
    return logAgesOfEnded / ended <= logAgesOfAlive / alive;
  }
}
