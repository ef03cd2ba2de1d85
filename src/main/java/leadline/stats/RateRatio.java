package leadline.stats;

import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.special.Beta;

/**
 * Exact comparison of two Poisson rates: given the events of both together, those of the first are
 * binomial, with a chance that depends on the ratio of the rates alone. Source: Przyborowski and
 * Wilenski 1940, Biometrika 31:313; Nelson 1982, Applied Life Data Analysis.
 *
 * @param first the rate above the line
 * @param second the rate below the line, its exposure in the same unit
 */
public record RateRatio(PoissonRate first, PoissonRate second) {

  /** Outcomes this near in likelihood are taken as equally likely, as rounding may part them. */
  private static final double EQUALLY_LIKELY = 1 + 1e-7;

  /**
   * @throws IllegalArgumentException if the events of both together exceed {@link
   *     Integer#MAX_VALUE}
   */
  public RateRatio {
    if (first.events() > Integer.MAX_VALUE - second.events()) {
      throw new IllegalArgumentException("too many events to compare: " + first + ", " + second);
    }
  }

  /**
   * The first rate as a multiple of the second; positive infinity when only the second has no
   * event, empty when neither has one.
   */
  public OptionalDouble ratio() {
    return events() == 0 ? OptionalDouble.empty() : OptionalDouble.of(first.rate() / second.rate());
  }

  /**
   * Exact two-sided limits of the ratio, which agree with {@link #pCentral()}: 0 below when the
   * first rate has no event, positive infinity above when the second has none. Source: Clopper and
   * Pearson 1934, Biometrika 26:404, applied to the first rate's share of the events.
   */
  public Limits limits(Confidence confidence) {
    if (events() == 0) {
      return new Limits(0, Double.POSITIVE_INFINITY);
    }
    // The share of the second is the complement, kept apart so that 1 - share loses no digits.
    Limits share = new Proportion(first.events(), events()).clopperPearson(confidence);
    Limits complement = new Proportion(second.events(), events()).clopperPearson(confidence);
    double exposures = second.exposure() / first.exposure();
    return new Limits(
        share.lower() / complement.upper() * exposures,
        share.upper() / complement.lower() * exposures);
  }

  /**
   * The chance of so few events of the first rate or fewer if the rates are equal: small when the
   * first is lower. Source: Przyborowski and Wilenski 1940, Biometrika 31:313.
   */
  public double pLess() {
    return chanceOfAsMany(second, first);
  }

  /**
   * The chance of so many events of the first rate or more if the rates are equal: small when the
   * first is higher. Source: Przyborowski and Wilenski 1940, Biometrika 31:313.
   */
  public double pGreater() {
    return chanceOfAsMany(first, second);
  }

  /**
   * Two-sided: twice the smaller one-sided p, at most 1. Source: Nelson 1982, Applied Life Data
   * Analysis.
   */
  public double pCentral() {
    return Math.min(1, 2 * Math.min(pLess(), pGreater()));
  }

  /**
   * Two-sided, counting half the chance of the outcome seen: less cautious than {@link
   * #pCentral()}. Source: Lancaster 1961, J. Am. Stat. Assoc. 56:223.
   */
  public double pMid() {
    double half = binomial().probability((int) first.events()) / 2;
    return Math.min(1, 2 * (Math.min(pLess(), pGreater()) - half));
  }

  /**
   * Two-sided: the chance of all outcomes no likelier than the one seen. May disagree with {@link
   * #limits(Confidence)}. Source: Fay 2010, R Journal 2(1):53, minimum likelihood.
   */
  public double pMinimumLikelihood() {
    BinomialDistribution binomial = binomial();
    double likeliest = EQUALLY_LIKELY * binomial.probability((int) first.events());
    double sum =
        IntStream.rangeClosed(0, (int) events())
            .mapToDouble(binomial::probability)
            .filter(chance -> chance <= likeliest)
            .sum();
    return Math.min(1, sum);
  }

  private long events() {
    return first.events() + second.events();
  }

  private static double chanceOfAsMany(PoissonRate one, PoissonRate other) {
    return one.events() == 0
        ? 1
        : Beta.regularizedBeta(
            chanceOfEach(one, other), (double) one.events(), other.events() + 1.0);
  }

  private static double chanceOfEach(PoissonRate one, PoissonRate other) {
    return one.exposure() / (one.exposure() + other.exposure());
  }

  private BinomialDistribution binomial() {
    return new BinomialDistribution((int) events(), chanceOfEach(first, second));
  }
}
