package leadline.stats;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Beta;

/**
 * A share of independent trials.
 *
 * @param successes how many trials had the property counted, 0 to {@code trials}
 * @param trials how many were made, 1 or more
 */
public record Proportion(long successes, long trials) {

  private static final double ACCURACY = 1e-14;
  private static final int EVALUATIONS = 500;

  /**
   * @throws IllegalArgumentException if there is no trial, or successes are not 0 to trials
   */
  public Proportion {
    if (trials < 1) {
      throw new IllegalArgumentException("a proportion needs a trial: " + trials);
    }
    if (successes < 0 || successes > trials) {
      throw new IllegalArgumentException(
          "successes must be 0 to " + trials + " trials: " + successes);
    }
  }

  /** Successes per trial, a fraction of 1: the maximum-likelihood estimate. */
  public double share() {
    return (double) successes / trials;
  }

  /**
   * Exact two-sided limits, fractions of 1; the lower is 0 at no success, the upper 1 at no
   * failure. Source: Clopper and Pearson 1934, Biometrika 26:404.
   */
  public Limits clopperPearson(Confidence confidence) {
    double tail = confidence.eachTail();
    long failures = trials - successes;
    return new Limits(
        successes == 0 ? 0 : Quantiles.beta(successes, failures + 1, tail),
        failures == 0 ? 1 : Quantiles.beta(successes + 1, failures, 1 - tail));
  }

  /**
   * Two-sided limits that count half the chance of the successes seen, fractions of 1: narrower
   * than the exact ones, and right on average rather than always; the lower is 0 at no success, the
   * upper 1 at no failure. Source: Lancaster 1961, J. Am. Stat. Assoc. 56:223; Agresti and Gottard
   * 2005, Stat. Med. 24:3743.
   */
  public Limits midP(Confidence confidence) {
    double tail = confidence.eachTail();
    Limits exact = clopperPearson(confidence);
    return new Limits(
        successes == 0 ? 0 : midPLimit(tail, exact.lower(), share()),
        successes == trials ? 1 : midPLimit(1 - tail, share(), exact.upper()));
  }

  /** Found between an exact limit and the share, which enclose it. */
  private double midPLimit(double chance, double low, double high) {
    return new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY * low, 0, 5)
        .solve(EVALUATIONS, share -> midChanceOfMore(share) - chance, low, high);
  }

  /** Of more successes than seen, and half that of as many. */
  private double midChanceOfMore(double share) {
    double failures = trials - successes;
    double asMany =
        successes == 0 ? 1 : Beta.regularizedBeta(share, (double) successes, failures + 1);
    double more = failures == 0 ? 0 : Beta.regularizedBeta(share, successes + 1.0, failures);
    return (asMany + more) / 2;
  }

  /**
   * Score limits without continuity correction, fractions of 1, approximate; the lower is 0 at no
   * success, the upper 1 at no failure. Source: Wilson 1927, J. Am. Stat. Assoc. 22:209; Newcombe
   * 1998, Stat. Med. 17:857, method 3.
   */
  public Limits wilson(Confidence confidence) {
    double z = confidence.normalQuantile();
    double shrinkage = 1 + z * z / trials;
    double centre = (share() + z * z / (2.0 * trials)) / shrinkage;
    double variance = share() * (1 - share()) / trials;
    double margin = z * Math.sqrt(variance + z * z / (4.0 * trials * trials)) / shrinkage;
    return new Limits(
        successes == 0 ? 0 : centre - margin, successes == trials ? 1 : centre + margin);
  }
}
