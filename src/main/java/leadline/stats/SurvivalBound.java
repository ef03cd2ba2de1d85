package leadline.stats;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import leadline.stats.LifeData.Alike;

/**
 * A one-sided limit of survival at one age that supposes no distribution: the age that half the
 * lives known from new outlived, or where none outlived any, the age by which half had ended. Lives
 * whose state at that age is not known count against the bound, except those last seen alive
 * before, which say nothing. Source: Clopper and Pearson 1934, Biometrika 26:404.
 */
final class SurvivalBound {

  private SurvivalBound() {}

  /** Empty where no life is known from new, or nothing about any. */
  static Optional<OneSidedLimit> of(LifeData data, Confidence confidence) {
    List<Alike> fromNew = data.lives().stream().filter(alike -> alike.life().entry() == 0).toList();
    double outlived = median(fromNew, Life::lower);
    double ended = median(fromNew, Life::upper);
    if (outlived > 0) {
      double alive = sum(fromNew, life -> life.lower() >= outlived);
      double dead = sum(fromNew, life -> life.lower() < outlived && isFinite(life.upper()));
      return Optional.of(
          new OneSidedLimit.SurvivalAtLeast(outlived, leastShare(alive, dead, confidence)));
    }
    if (isFinite(ended) && ended > 0) {
      double dead = sum(fromNew, life -> life.upper() <= ended);
      double alive = sum(fromNew, life -> life.upper() > ended);
      return Optional.of(
          new OneSidedLimit.SurvivalAtMost(ended, 1 - leastShare(dead, alive, confidence)));
    }
    return Optional.empty();
  }

  private static double leastShare(double with, double without, Confidence confidence) {
    return Quantiles.beta(with, without + 1, confidence.oneTail());
  }

  private static double sum(List<Alike> lives, Predicate<Life> which) {
    return lives.stream()
        .filter(alike -> which.test(alike.life()))
        .mapToDouble(Alike::weight)
        .sum();
  }

  private static double median(List<Alike> lives, ToDoubleFunction<Life> age) {
    double half = sum(lives, life -> true) / 2;
    double sum = 0;
    for (Alike alike :
        lives.stream()
            .sorted(Comparator.comparingDouble(other -> age.applyAsDouble(other.life())))
            .toList()) {
      sum += alike.weight();
      if (sum >= half) {
        return age.applyAsDouble(alike.life());
      }
    }
    return 0;
  }

  private static boolean isFinite(double age) {
    return age < Double.POSITIVE_INFINITY;
  }
}
