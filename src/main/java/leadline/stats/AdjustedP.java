package leadline.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The chances of several tests at once, adjusted for their number so that each may be compared with
 * the level meant for all. All keep the order of the tests and are 0 to 1.
 */
public final class AdjustedP {

  private AdjustedP() {}

  /**
   * Holds the chance of any false alarm. Source: Holm 1979, Scand. J. Stat. 6:65.
   *
   * @param p of each test, 0 to 1
   * @throws IllegalArgumentException if a chance is not 0 to 1
   */
  public static double[] holm(double... p) {
    int[] order = order(p);
    double[] adjusted = new double[p.length];
    double largest = 0;
    for (int rank = 0; rank < p.length; rank++) {
      largest = Math.max(largest, (p.length - rank) * p[order[rank]]);
      adjusted[order[rank]] = Math.min(1, largest);
    }
    return adjusted;
  }

  /**
   * Holds the expected share of false alarms among the alarms, of tests that are independent or
   * positively dependent. Source: Benjamini and Hochberg 1995, J. R. Stat. Soc. B 57:289.
   *
   * @param p of each test, 0 to 1
   * @throws IllegalArgumentException if a chance is not 0 to 1
   */
  public static double[] benjaminiHochberg(double... p) {
    int[] order = order(p);
    double[] adjusted = new double[p.length];
    double smallest = 1;
    for (int rank = p.length; rank >= 1; rank--) {
      smallest = Math.min(smallest, p[order[rank - 1]] * p.length / rank);
      adjusted[order[rank - 1]] = smallest;
    }
    return adjusted;
  }

  private static int[] order(double... p) {
    if (Arrays.stream(p).anyMatch(chance -> !(chance >= 0 && chance <= 1))) {
      throw new IllegalArgumentException("chances must be 0 to 1: " + Arrays.toString(p));
    }
    return IntStream.range(0, p.length)
        .boxed()
        .sorted(Comparator.comparingDouble(index -> p[index]))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
