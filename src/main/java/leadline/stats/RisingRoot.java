package leadline.stats;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** The positive number at which a rising function is zero. */
final class RisingRoot {

  private static final double RELATIVE_ACCURACY = 1e-14;
  private static final int EVALUATIONS = 500;
  private static final int ORDER = 5;

  /** Bracketing stops here: beyond, no double has a logarithm. */
  private static final double LARGEST_LOGARITHM = 700;

  private RisingRoot() {}

  /**
   * Brackets on the logarithmic scale outwards from a guess, then Brent's method. Source: Brent
   * 1973, Algorithms for Minimization without Derivatives, chapter 4.
   *
   * @param rising negative near 0 and positive for large numbers, never falling
   * @param guess more than 0, finite
   * @throws IllegalStateException where the function does not change its sign
   */
  static double of(DoubleUnaryOperator rising, double guess) {
    double middle = Math.log(guess);
    double value = rising.applyAsDouble(guess);
    if (value == 0) {
      return guess;
    }
    double direction = value < 0 ? 1 : -1;
    double inner = middle;
    for (double step = 0.25; Math.abs(inner) < LARGEST_LOGARITHM; step *= 2) {
      double outer = inner + direction * step;
      if (direction * rising.applyAsDouble(Math.exp(outer)) >= 0) {
        double low = Math.min(inner, outer);
        double high = Math.max(inner, outer);
        return Math.exp(
            new BracketingNthOrderBrentSolver(RELATIVE_ACCURACY, RELATIVE_ACCURACY, 0, ORDER)
                .solve(EVALUATIONS, x -> rising.applyAsDouble(Math.exp(x)), low, high));
      }
      inner = outer;
    }
    throw new IllegalStateException("no change of sign on either side of " + guess);
  }
}
