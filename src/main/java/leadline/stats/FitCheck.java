package leadline.stats;

import java.util.Optional;
import java.util.SplittableRandom;

/**
 * A test whether lives may have come from a distribution, which respects how they were watched: the
 * distance of the nonparametric estimate from the fitted curve, {@link CurveDistance}, against the
 * distances of lives drawn from the fit, watched alike ({@link ObservationScheme}) and fitted anew.
 * It is rather cautious: of 800 sets of 30 and 400 of 100 Weibull lives, watched until an age or
 * inspected again and again or once, 2 to 6 % had a p value of at most 0.05, 4 to 13 % of at most
 * 0.1. Source: Davison and Hinkley 1997, Bootstrap Methods and their Application, sections 3.5 and
 * 4.2.3.
 */
public sealed interface FitCheck {

  /** With fewer, no p value is below 0.05. */
  int FEWEST = 19;

  /**
   * What came of it.
   *
   * @param statistic the distance, without a unit, 0 or more
   * @param p the share of drawn distances that reach it, itself counted among them: more than 0, at
   *     most 1
   * @param standardErrorOfP what p would scatter with other random numbers
   */
  record Checked(double statistic, double p, double standardErrorOfP) implements FitCheck {}

  /** The data do not tell. */
  record Insufficient(Why why) implements FitCheck {}

  /** Why the data do not tell. */
  enum Why {
    /** The data have no fit of this distribution. */
    NO_FIT,
    /** The distribution can meet the shares at as many ages as were looked at. */
    SATURATED,
    /** Some lives entered late, for which there is no nonparametric estimate here. */
    DELAYED_ENTRY,
    /** Some weights are no whole numbers, so that they count no lives. */
    WEIGHTS_NOT_COUNTS,
    /** Most drawn lives had no fit. */
    DRAWS_WITHOUT_FIT
  }

  /**
   * Checks a distribution on lives. Draws without a fit are drawn again, up to as many as were
   * asked for, so that the p value holds among data that have one.
   *
   * @param simulations how many, 19 or more; the standard error of p is root(p (1 - p) /
   *     simulations)
   * @param start of the sequence of random numbers; the same start gives the same p
   * @throws IllegalArgumentException if there are fewer than 19 simulations
   */
  static FitCheck of(LifeDistribution distribution, LifeData data, int simulations, long start) {
    if (simulations < FEWEST) {
      throw new IllegalArgumentException("too few simulations for a p value: " + simulations);
    }
    Optional<? extends FittedLife> fit = distribution.fit(data).fit();
    Optional<Why> why = reasonAgainst(distribution, data);
    if (fit.isEmpty() || why.isPresent()) {
      return new Insufficient(why.orElse(Why.NO_FIT));
    }
    ObservationScheme scheme = new ObservationScheme(data);
    double statistic = CurveDistance.between(data, fit.get());
    // Distances that differ in the last digits are the same.
    double almost = statistic * (1 - 1e-9) - 1e-12;
    SplittableRandom random = new SplittableRandom(start);
    int drawn = 0;
    int reaching = 0;
    for (int draw = 0; drawn < simulations && draw < 2 * simulations; draw++) {
      LifeData lives = scheme.draw(fit.get(), random);
      Optional<? extends FittedLife> anew = distribution.fit(lives).fit();
      if (anew.isPresent()) {
        drawn++;
        reaching += CurveDistance.between(lives, anew.get()) >= almost ? 1 : 0;
      }
    }
    if (drawn < simulations) {
      return new Insufficient(Why.DRAWS_WITHOUT_FIT);
    }
    double p = (1.0 + reaching) / (1.0 + simulations);
    return new Checked(statistic, p, Math.sqrt(p * (1 - p) / simulations));
  }

  private static Optional<Why> reasonAgainst(LifeDistribution distribution, LifeData data) {
    if (data.hasDelayedEntry()) {
      return Optional.of(Why.DELAYED_ENTRY);
    }
    if (data.lives().stream().anyMatch(alike -> alike.weight() != Math.rint(alike.weight()))) {
      return Optional.of(Why.WEIGHTS_NOT_COUNTS);
    }
    int parameters = distribution == LifeDistribution.EXPONENTIAL ? 1 : 2;
    return CurveDistance.agesCompared(data) <= parameters
        ? Optional.of(Why.SATURATED)
        : Optional.empty();
  }
}
