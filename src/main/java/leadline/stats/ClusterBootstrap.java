package leadline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.function.Function;

/**
 * Limits of a statistic of data in clusters, such as vessels, within which they may depend on each
 * other: whole clusters are drawn with replacement, as many as there are, and the statistic's
 * percentiles over many draws are the limits. Approximate, and too narrow with few clusters.
 * Source: Efron and Tibshirani 1993, An Introduction to the Bootstrap, section 13.3; Davison and
 * Hinkley 1997, Bootstrap Methods and their Application, section 3.8.
 *
 * @param draws how many, 100 or more
 * @param start of the sequence of random numbers; the same start gives the same limits
 */
public record ClusterBootstrap(int draws, long start) {

  private static final int FEWEST_DRAWS = 100;

  /** Of the draws, how many may leave the statistic undefined. */
  private static final double UNDEFINED_SHARE = 0.05;

  /**
   * @throws IllegalArgumentException if there are fewer than 100 draws
   */
  public ClusterBootstrap {
    if (draws < FEWEST_DRAWS) {
      throw new IllegalArgumentException("too few draws for limits: " + draws);
    }
  }

  /**
   * Percentile limits; empty with fewer than two clusters, or where the statistic is undefined in
   * more than one draw in twenty; draws where it is undefined are left out.
   *
   * @param clusters by name, whose order fixes the draws
   * @param statistic of the data of the clusters drawn, finite
   */
  public <K, T> Optional<Limits> limits(
      SortedMap<K, T> clusters,
      Function<? super List<T>, OptionalDouble> statistic,
      Confidence confidence) {
    List<T> data = List.copyOf(clusters.values());
    if (data.size() < 2) {
      return Optional.empty();
    }
    SplittableRandom random = new SplittableRandom(start);
    double[] values = new double[draws];
    int defined = 0;
    for (int draw = 0; draw < draws; draw++) {
      List<T> drawn = new ArrayList<>();
      for (int pick = 0; pick < data.size(); pick++) {
        drawn.add(data.get(random.nextInt(data.size())));
      }
      OptionalDouble value = statistic.apply(drawn);
      if (value.isPresent()) {
        values[defined] = value.getAsDouble();
        defined++;
      }
    }
    if (defined < draws * (1 - UNDEFINED_SHARE)) {
      return Optional.empty();
    }
    double[] sorted = Arrays.copyOf(values, defined);
    Arrays.sort(sorted);
    double tail = confidence.eachTail();
    return Optional.of(new Limits(quantile(sorted, tail), quantile(sorted, 1 - tail)));
  }

  /** The value at (draws + 1) p, between neighbours in proportion. */
  private static double quantile(double[] sorted, double p) {
    double place = Math.min(Math.max((sorted.length + 1) * p, 1), sorted.length);
    int below = (int) Math.floor(place);
    double fraction = place - below;
    double value = sorted[below - 1];
    return fraction == 0 ? value : value + fraction * (sorted[below] - value);
  }
}
