package leadline.summary;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import leadline.stats.ClusterBootstrap;
import leadline.stats.Life;
import leadline.stats.LifeData;
import leadline.stats.Limits;

/** Limits by drawing anew from what was seen: whole vessels, or single lives. */
final class LifeBootstrap {

  private static final int FEWEST_VESSELS = 10;

  private static final ClusterBootstrap DRAWS = new ClusterBootstrap(199, 1);

  /** How often each of all the lives is among those drawn together, by its place. */
  private final SortedMap<Integer, Map<Integer, Long>> clusters = new TreeMap<>();

  private final LifeData all;
  private final Map<Life, Integer> places = new HashMap<>();

  private LifeBootstrap(RoutineLives lives) {
    this.all = lives.total().data();
    all.distinct().forEach(life -> places.put(life, places.size()));
  }

  /**
   * Allows for lives on one vessel to be alike. Empty with fewer than ten vessels, of which drawing
   * anew would tell too little.
   */
  static Optional<LifeBootstrap> ofVessels(RoutineLives lives) {
    LifeBootstrap vessels = new LifeBootstrap(lives);
    lives.byVessel().values().forEach(vessel -> vessels.add(vessels.placed(vessel)));
    return vessels.clusters.size() < FEWEST_VESSELS ? Optional.empty() : Optional.of(vessels);
  }

  /** Takes lives as independent, on one vessel too. */
  static LifeBootstrap ofLives(RoutineLives lives) {
    LifeBootstrap single = new LifeBootstrap(lives);
    single
        .placed(lives.total())
        .forEach(
            (place, times) -> {
              for (long time = 0; time < times; time++) {
                single.add(Map.of(place, 1L));
              }
            });
    return single;
  }

  private void add(Map<Integer, Long> together) {
    if (!together.isEmpty()) {
      clusters.put(clusters.size(), together);
    }
  }

  private SortedMap<Integer, Long> placed(LifeCounts counts) {
    SortedMap<Integer, Long> placed = new TreeMap<>();
    counts
        .seen()
        .forEach(
            (life, times) -> {
              if (life.tellsAnything()) {
                placed.merge(places.getOrDefault(life.life(), 0), times, Long::sum);
              }
            });
    return placed;
  }

  /** Limits of each statistic, in their order; empty where too many draws leave it undefined. */
  List<Optional<Limits>> limits(Function<LifeData, List<OptionalDouble>> statistics) {
    return DRAWS.limitsOfEach(
        clusters, drawn -> statistics.apply(together(drawn)), Evidence.CONFIDENCE);
  }

  /** Drawn limits, moved out as far as the estimate where they leave it outside. */
  static Limits around(double estimate, Limits drawn) {
    return new Limits(Math.min(drawn.lower(), estimate), Math.max(drawn.upper(), estimate));
  }

  private LifeData together(List<Map<Integer, Long>> drawn) {
    double[] weights = new double[places.size()];
    drawn.forEach(cluster -> cluster.forEach((place, times) -> weights[place] += times));
    return all.reweighted(weights);
  }
}
