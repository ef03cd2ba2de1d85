package leadline.summary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
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

  /** Of which the fifth from either end are the 95 % limits. */
  private static final ClusterBootstrap DRAWS = new ClusterBootstrap(199, 1);

  /** Lives that are drawn together, each with how many tell the same. */
  private record Together(List<Life> lives, List<Long> times) {

    static Together of(LifeCounts counts) {
      List<Life> lives = new ArrayList<>();
      List<Long> times = new ArrayList<>();
      counts
          .seen()
          .forEach(
              (life, count) -> {
                if (life.tellsAnything()) {
                  lives.add(life.life());
                  times.add(count);
                }
              });
      return new Together(lives, times);
    }

    static LifeData data(Collection<Together> drawn) {
      LifeData.Builder data = new LifeData.Builder();
      for (Together group : drawn) {
        for (int index = 0; index < group.lives.size(); index++) {
          data.add(group.lives.get(index), group.times.get(index));
        }
      }
      return data.build();
    }
  }

  private final SortedMap<Integer, Together> clusters;

  private LifeBootstrap(SortedMap<Integer, Together> clusters) {
    this.clusters = clusters;
  }

  /**
   * Allows for lives on one vessel to be alike. Empty with fewer than ten vessels, of which drawing
   * anew would tell too little.
   */
  static Optional<LifeBootstrap> ofVessels(RoutineLives lives) {
    SortedMap<Integer, Together> vessels = new TreeMap<>();
    lives.byVessel().values().stream()
        .map(Together::of)
        .filter(vessel -> !vessel.lives().isEmpty())
        .forEach(vessel -> vessels.put(vessels.size(), vessel));
    return vessels.size() < FEWEST_VESSELS
        ? Optional.empty()
        : Optional.of(new LifeBootstrap(vessels));
  }

  /** Takes lives as independent, on one vessel too. */
  static LifeBootstrap ofLives(RoutineLives lives) {
    Together all = Together.of(lives.total());
    SortedMap<Integer, Together> single = new TreeMap<>();
    for (int index = 0; index < all.lives().size(); index++) {
      Together one = new Together(List.of(all.lives().get(index)), List.of(1L));
      for (long time = 0; time < all.times().get(index); time++) {
        single.put(single.size(), one);
      }
    }
    return new LifeBootstrap(single);
  }

  /** Limits of each statistic, in their order; empty where too many draws leave it undefined. */
  List<Optional<Limits>> limits(Function<LifeData, List<OptionalDouble>> statistics) {
    return DRAWS.limitsOfEach(
        clusters, drawn -> statistics.apply(Together.data(drawn)), Evidence.CONFIDENCE);
  }
}
