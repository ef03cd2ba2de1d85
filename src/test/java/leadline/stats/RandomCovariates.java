package leadline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Lives of any kind with a load, any number, and a maker, 0 or 1. */
final class RandomCovariates {

  static final List<String> NAMES = List.of("load", "maker");

  /** A life and what is known of it beside. */
  record Known(Life life, double load, double maker, int weight) {

    List<Double> covariates() {
      return List.of(load, maker);
    }
  }

  private RandomCovariates() {}

  static List<Known> someWithDelayedEntry(Random random) {
    return with(RandomLives.someWithDelayedEntry(random), random);
  }

  static List<Known> watchedFromNew(Random random) {
    return with(RandomLives.watchedFromNew(random), random);
  }

  private static List<Known> with(List<Life> lives, Random random) {
    List<Known> known = new ArrayList<>();
    for (Life life : lives) {
      known.add(
          new Known(
              life,
              random.nextInt(40) / 10.0,
              known.size() % 3 == 0 ? 1 : 0,
              1 + random.nextInt(5)));
    }
    return known;
  }

  static RegressionData data(List<Known> lives) {
    RegressionData.Builder builder = new RegressionData.Builder(NAMES);
    lives.forEach(known -> builder.add(known.life(), known.covariates(), known.weight()));
    return builder.build();
  }

  static WeibullRegression regression(List<Known> lives) {
    RegressionOutcome outcome = WeibullRegression.of(data(lives));
    return outcome.regression().orElseThrow(() -> new AssertionError(outcome.toString()));
  }
}
