package leadline.stats;

import java.util.List;
import java.util.stream.Stream;
import leadline.stats.LifeData.Alike;

/**
 * How far the nonparametric estimate of Turnbull lies from a fitted curve: the number of lives
 * times the integral of the squared difference of the shares failed, over the share failed by the
 * estimate, as far as lives were watched. Where the mass of an innermost interval lies within it is
 * not known, so the difference is taken to run straight from one end to the other. For complete
 * lives it is the Cramer-von Mises statistic, 1/(12 n) + sum((2 i - 1)/(2 n) - F)^2. Source: Koziol
 * and Green 1976, Biometrika 63:465, for right-censored lives.
 */
final class CurveDistance {

  private CurveDistance() {}

  /** Of lives known from new. */
  static double between(LifeData data, FittedLife fit) {
    double sum = 0;
    double failed = 0;
    for (Turnbull.Support support : Turnbull.of(intervals(data)).support()) {
      if (support.right() < Double.POSITIVE_INFINITY) {
        double before = failed - fit.failureBy(support.left());
        failed += support.mass();
        double after = failed - fit.failureBy(support.right());
        sum += support.mass() * (before * before + before * after + after * after) / 3;
      }
    }
    return data.lives().stream().mapToDouble(Alike::weight).sum() * sum;
  }

  /** The ages, above 0, at which the estimate can differ from a curve. */
  static long agesCompared(LifeData data) {
    boolean areWatched = hasSeenEnds(data);
    return data.lives().stream()
        .map(Alike::life)
        .filter(life -> !(life instanceof Life.Outlived && areWatched))
        .flatMap(life -> Stream.of(life.lower(), life.upper()))
        .filter(age -> age > 0 && age < Double.POSITIVE_INFINITY)
        .distinct()
        .count();
  }

  /** Whether the end of some life was seen. */
  static boolean hasSeenEnds(LifeData data) {
    return data.lives().stream().anyMatch(alike -> alike.life() instanceof Life.FailedAt);
  }

  private static List<ObservedInterval> intervals(LifeData data) {
    return data.lives().stream()
        .map(
            alike ->
                new ObservedInterval(alike.life().lower(), alike.life().upper(), alike.weight()))
        .toList();
  }
}
