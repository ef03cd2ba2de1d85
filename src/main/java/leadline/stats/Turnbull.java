package leadline.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * The nonparametric maximum-likelihood estimate of survival from durations that inspections confine
 * to intervals (lower, upper], whatever mixture of seen ends, interval-, left- and right-censoring.
 * It puts its mass on innermost intervals and says nothing of how mass lies within one, so the
 * curve has a lower and an upper edge. On seen ends and right-censoring alone it is the
 * Kaplan-Meier estimate. Source: Turnbull 1976, J. R. Stat. Soc. B 38:290; Peto 1973, Applied
 * Statistics 22:86.
 */
public final class Turnbull {

  /**
   * An innermost interval (left, right], or a point where both are equal, that carries mass.
   *
   * @param left in the unit of the durations
   * @param right in the unit of the durations; positive infinity where mass is left beyond all
   *     inspections
   * @param mass the share of durations that end there, more than 0, at most 1
   * @param survival the share of durations that last beyond {@code right}, 0 to 1
   */
  public record Support(double left, double right, double mass, double survival) {

    /** Whether the mass lies at a point, a seen end. */
    public boolean isPoint() {
      return left == right;
    }
  }

  private final InnermostIntervals intervals;
  private final double[] masses;
  private final double logLikelihood;
  private final double shortfall;

  private Turnbull(InnermostIntervals intervals, MassLikelihood likelihood) {
    this.intervals = intervals;
    this.masses = new MassMaximizer(likelihood).maximum();
    this.logLikelihood = likelihood.logLikelihood(likelihood.sums(masses));
    this.shortfall = likelihood.shortfall(masses);
  }

  /**
   * Of durations all watched from their start: delayed entry has no place here.
   *
   * @throws IllegalArgumentException if there is no duration
   */
  public static Turnbull of(List<ObservedInterval> durations) {
    if (durations.isEmpty()) {
      throw new IllegalArgumentException("no duration");
    }
    InnermostIntervals intervals = InnermostIntervals.of(durations);
    return new Turnbull(intervals, new MassLikelihood(intervals, durations));
  }

  /**
   * Of lives all known from new.
   *
   * @throws IllegalArgumentException if there is no life, or one that entered later
   */
  public static Turnbull of(LifeData lives) {
    if (lives.hasDelayedEntry()) {
      throw new IllegalArgumentException("a life known only from a later age");
    }
    return of(
        lives.lives().stream()
            .map(
                alike ->
                    new ObservedInterval(
                        alike.life().lower(), alike.life().upper(), alike.weight()))
            .toList());
  }

  /** In time order. Where the maximum is reached by many sets of masses, one of them. */
  public List<Support> support() {
    List<Support> support = new ArrayList<>();
    double[] survival = survivalAfterEach();
    for (int index = 0; index < masses.length; index++) {
      if (masses[index] > 0) {
        support.add(
            new Support(
                intervals.at(index).left(),
                intervals.at(index).right(),
                masses[index],
                survival[index]));
      }
    }
    return List.copyOf(support);
  }

  /** How many innermost intervals there are, with and without mass. */
  public int candidates() {
    return masses.length;
  }

  /** The sum of weight times log probability; 0 where the data leave everything possible. */
  public double logLikelihood() {
    return logLikelihood;
  }

  /**
   * The certificate of optimality: no masses whatever have a log-likelihood higher by more than
   * this, 0 or more. By the Kuhn-Tucker conditions a maximum is where no slope exceeds the total
   * weight; the excess of the steepest bounds what is missing. Here about 1e-14 of the total
   * weight. Source: Gentleman and Geyer 1994, Biometrika 81:618; Lindsay 1983, Annals of Statistics
   * 11:86, theorem 3.1.
   */
  public double shortfall() {
    return shortfall;
  }

  /**
   * The lower and the upper edge of the share of durations longer than a time, apart only within an
   * innermost interval that carries mass. These are no confidence limits.
   *
   * @param time in the unit of the durations, 0 or more
   * @throws IllegalArgumentException if the time is negative or not a number
   */
  public Limits survivalAt(double time) {
    if (!(time >= 0)) {
      throw new IllegalArgumentException("a time must be 0 or more: " + time);
    }
    double surely = 0;
    double perhaps = 0;
    for (int index = masses.length - 1; index >= 0 && intervals.at(index).right() > time; index--) {
      perhaps += masses[index];
      surely += intervals.at(index).left() >= time ? masses[index] : 0;
    }
    return new Limits(Math.min(1, surely), Math.min(1, perhaps));
  }

  InnermostIntervals intervals() {
    return intervals;
  }

  /** The share of durations that last beyond each innermost interval. */
  double[] survivalAfterEach() {
    double[] survival = new double[masses.length];
    for (int index = masses.length - 2; index >= 0; index--) {
      survival[index] = Math.min(1, survival[index + 1] + masses[index + 1]);
    }
    return survival;
  }
}
