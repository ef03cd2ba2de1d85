package leadline.study;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import leadline.stats.Confidence;
import leadline.stats.Limits;
import leadline.stats.PoissonRate;
import leadline.stats.Proportion;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;

/** The chance, summed without simulation, that limits enclose the true rate or share. */
final class ExactCoverage {

  /** How limits are set. */
  interface Method<E> {
    Limits limits(E seen, Confidence confidence);
  }

  /** Least and mean coverage over a range of truths, in percent. */
  record Range(double least, double mean) {

    private static final int TRUTHS = 400;

    static Range over(double from, double to, DoubleUnaryOperator coverage) {
      var percent =
          IntStream.rangeClosed(0, TRUTHS)
              .mapToDouble(step -> from + (to - from) * step / TRUTHS)
              .map(truth -> 100 * coverage.applyAsDouble(truth))
              .summaryStatistics();
      return new Range(percent.getMin(), percent.getAverage());
    }

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%.1f, %.1f", least, mean);
    }
  }

  private static final Confidence CONFIDENCE = Confidence.of(0.95);

  /** Either side of 3, 5, 10 and 30 events expected. */
  private static final double[][] EXPECTED = {{2, 4}, {4, 6}, {8, 12}, {25, 35}};

  private static final int TRIALS = 200;

  private ExactCoverage() {}

  /** Prints a line for each range of events expected, least and mean coverage of each method. */
  static void print() {
    System.out.printf(
        "%nBy summation%n%n| expected | Garwood | mid-p | Clopper-Pearson | mid-p | Wilson |%n");
    for (double[] expected : EXPECTED) {
      System.out.printf(
          Locale.ROOT,
          "| %.0f-%.0f | %s | %s | %s | %s | %s |%n",
          expected[0],
          expected[1],
          ofRate(expected, PoissonRate::limits),
          ofRate(expected, PoissonRate::midPLimits),
          ofShare(expected, Proportion::clopperPearson),
          ofShare(expected, Proportion::midP),
          ofShare(expected, Proportion::wilson));
    }
  }

  private static Range ofRate(double[] expected, Method<PoissonRate> method) {
    return Range.over(expected[0], expected[1], ofRate(method, TRIALS));
  }

  private static Range ofShare(double[] expected, Method<Proportion> method) {
    return Range.over(expected[0] / TRIALS, expected[1] / TRIALS, ofShare(method, TRIALS));
  }

  /** Of the rate of events in an exposure of 1, the true rate being the mean. */
  static DoubleUnaryOperator ofRate(Method<PoissonRate> method, int most) {
    Limits[] limits =
        IntStream.rangeClosed(0, most)
            .mapToObj(events -> method.limits(new PoissonRate(events, 1), CONFIDENCE))
            .toArray(Limits[]::new);
    return mean -> covered(limits, mean, new PoissonDistribution(mean)::probability);
  }

  /** Of a share of so many trials. */
  static DoubleUnaryOperator ofShare(Method<Proportion> method, int trials) {
    Limits[] limits =
        IntStream.rangeClosed(0, trials)
            .mapToObj(successes -> method.limits(new Proportion(successes, trials), CONFIDENCE))
            .toArray(Limits[]::new);
    return share -> covered(limits, share, new BinomialDistribution(trials, share)::probability);
  }

  private static double covered(Limits[] limits, double truth, IntToDoubleFunction chance) {
    return IntStream.range(0, limits.length)
        .filter(count -> limits[count].lower() <= truth && truth <= limits[count].upper())
        .mapToDouble(chance)
        .sum();
  }
}
