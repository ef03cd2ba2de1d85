package leadline.stats;

import java.util.Arrays;

/** The nearest sequence that never falls. */
final class IsotonicRegression {

  private IsotonicRegression() {}

  /**
   * The never falling sequence with the least weighted sum of squared distances from the values, by
   * pooling adjacent violators: every stretch of it is a weighted mean of values. Source: Ayer,
   * Brunk, Ewing, Reid and Silverman 1955, Ann. Math. Stat. 26:641; Robertson, Wright and Dykstra
   * 1988, Order Restricted Statistical Inference, section 1.2.
   *
   * @param weights as many as values, each more than 0
   */
  static double[] fit(double[] values, double[] weights) {
    double[] means = new double[values.length];
    double[] pooledWeights = new double[values.length];
    int[] ends = new int[values.length];
    int pools = 0;
    for (int index = 0; index < values.length; index++) {
      double mean = values[index];
      double weight = weights[index];
      while (pools > 0 && means[pools - 1] >= mean) {
        pools--;
        double together = weight + pooledWeights[pools];
        mean = (mean * weight + means[pools] * pooledWeights[pools]) / together;
        weight = together;
      }
      means[pools] = mean;
      pooledWeights[pools] = weight;
      ends[pools] = index + 1;
      pools++;
    }
    double[] fitted = new double[values.length];
    for (int pool = 0; pool < pools; pool++) {
      Arrays.fill(fitted, pool == 0 ? 0 : ends[pool - 1], ends[pool], means[pool]);
    }
    return fitted;
  }
}
