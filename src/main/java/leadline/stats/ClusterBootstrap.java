package leadline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Limits of a statistic of data in clusters, such as vessels, within which they may depend on each
 * other: whole clusters are drawn with replacement, as many as there are, and the statistic's
 * percentiles over many draws are the limits, farther out the fewer clusters there are.
 * Approximate. Source: Efron and Tibshirani 1993, An Introduction to the Bootstrap, section 13.3;
 * Davison and Hinkley 1997, Bootstrap Methods and their Application, section 3.8.
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
    return limitsOfEach(clusters, drawn -> List.of(statistic.apply(drawn)), confidence).stream()
        .findFirst()
        .flatMap(Function.identity());
  }

  /**
   * Percentile limits of several statistics from the same draws, in their order; each is empty
   * where {@link #limits} would be. Nothing with fewer than two clusters.
   *
   * @param statistics of the data of the clusters drawn, always as many, finite
   */
  public <K, T> List<Optional<Limits>> limitsOfEach(
      SortedMap<K, T> clusters,
      Function<? super List<T>, List<OptionalDouble>> statistics,
      Confidence confidence) {
    List<T> data = List.copyOf(clusters.values());
    if (data.size() < 2) {
      return List.of();
    }
    SplittableRandom random = new SplittableRandom(start);
    List<DoubleStream.Builder> values = new ArrayList<>();
    for (int draw = 0; draw < draws; draw++) {
      List<T> drawn = new ArrayList<>();
      for (int pick = 0; pick < data.size(); pick++) {
        drawn.add(data.get(random.nextInt(data.size())));
      }
      List<OptionalDouble> drawnValues = statistics.apply(drawn);
      for (int index = 0; index < drawnValues.size(); index++) {
        if (values.size() <= index) {
          values.add(DoubleStream.builder());
        }
        drawnValues.get(index).ifPresent(values.get(index)::add);
      }
    }
    double tail = expandedTail(data.size(), confidence);
    return values.stream()
        .map(found -> percentiles(found.build().sorted().toArray(), tail))
        .toList();
  }

  private Optional<Limits> percentiles(double[] sorted, double tail) {
    if (sorted.length < draws * (1 - UNDEFINED_SHARE)) {
      return Optional.empty();
    }
    return Optional.of(new Limits(quantile(sorted, tail), quantile(sorted, 1 - tail)));
  }

  /**
   * Plain percentiles of few clusters are too narrow, as a normal interval with the variance
   * divided by n is: their tails shrink to what Student's distribution and n - 1 would leave.
   * Source: Hesterberg 2015, The American Statistician 69:371, section 5.3, expanded percentile
   * limits.
   */
  private static double expandedTail(int clusters, Confidence confidence) {
    double quantile =
        new TDistribution(clusters - 1).inverseCumulativeProbability(1 - confidence.eachTail());
    double spread = Math.sqrt(clusters / (clusters - 1.0));
    return new NormalDistribution().cumulativeProbability(-quantile * spread);
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
