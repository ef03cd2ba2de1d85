package leadline.stats;

import java.util.List;
import java.util.NavigableSet;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.stats.LifeData.Alike;

/**
 * How lives were watched, to watch others alike.
 *
 * <ul>
 *   <li>Where the end of any life was seen, one seen so and one that outlived an age are taken to
 *       be watched all the time.
 *   <li>Where some end lies between two inspections, a life that is not watched is taken to be
 *       inspected again and again: its end lies in one of the intervals found that contain it, or
 *       if there is none, between the nearest ages of inspection of any.
 *   <li>Otherwise each is inspected once, at its own age.
 * </ul>
 *
 * Watching, or inspection, goes on to the age that a life outlived; for one that failed, to an age
 * drawn from the Kaplan-Meier estimate of those ages, beyond its own. Source: Davison and Hinkley
 * 1997, Bootstrap Methods and their Application, algorithm 3.1, for watched lives.
 */
final class ObservationScheme {

  private enum End {
    OF_WATCHING
  }

  private final List<Alike> lives;
  private final boolean areWatched;
  private final List<Alike> found;
  private final boolean areInspectedAgain;
  private final NavigableSet<Double> ages;
  private final List<SurvivalPoint> watching;

  /**
   * @param data lives known from new, of whole weights, some of which failed
   */
  ObservationScheme(LifeData data) {
    lives = data.lives();
    areWatched = CurveDistance.hasSeenEnds(data);
    found = lives.stream().filter(alike -> alike.life() instanceof Life.FailedBetween).toList();
    areInspectedAgain = found.stream().anyMatch(alike -> alike.life().lower() > 0);
    ages =
        lives.stream()
            .flatMap(alike -> Stream.of(alike.life().lower(), alike.life().upper()))
            .filter(age -> age < Double.POSITIVE_INFINITY)
            .collect(Collectors.toCollection(TreeSet::new));
    SurvivalTally<End> tally = new SurvivalTally<>();
    for (Alike alike : lives) {
      tally.add(
          alike.failed()
              ? ObservedTime.censored(alike.life().upper())
              : ObservedTime.ended(alike.life().lower(), End.OF_WATCHING),
          Math.round(alike.weight()));
    }
    watching = KaplanMeier.of(tally).points();
  }

  /** As many lives, drawn from a fit. */
  LifeData draw(FittedLife fit, SplittableRandom random) {
    LifeData.Builder drawn = new LifeData.Builder();
    for (Alike alike : lives) {
      for (long count = Math.round(alike.weight()); count > 0; count--) {
        double end = fit.estimate(LifeQuantity.quantile(random.nextDouble(1e-300, 1)));
        double possible = Math.max(Double.MIN_NORMAL, Math.min(Double.MAX_VALUE, end));
        drawn.add(watched(alike.life(), possible, random), 1);
      }
    }
    return drawn.build();
  }

  private Life watched(Life like, double end, SplittableRandom random) {
    if (areWatched && !(like instanceof Life.FailedBetween)) {
      double until = watchedUntil(like, random);
      return end <= until ? Life.failedAt(end) : Life.outlived(until);
    }
    if (areInspectedAgain) {
      double until = Math.min(ages.last(), watchedUntil(like, random));
      return end <= until ? found(end, until, random) : Life.outlived(until);
    }
    double age = like instanceof Life.Outlived ? like.lower() : like.upper();
    return end <= age ? Life.failedBetween(0, age) : Life.outlived(age);
  }

  private double watchedUntil(Life like, SplittableRandom random) {
    if (like instanceof Life.Outlived) {
      return like.lower();
    }
    double reached = 1;
    for (SurvivalPoint point : watching) {
      reached = point.time() < like.upper() ? point.survival() : reached;
    }
    double left = reached * random.nextDouble();
    for (SurvivalPoint point : watching) {
      if (point.time() >= like.upper() && point.survival() <= left) {
        return point.time();
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** An interval with an end, drawn by weight from those found up to an age. */
  private Life found(double end, double until, SplittableRandom random) {
    List<Alike> around =
        found.stream()
            .filter(alike -> alike.life().lower() < end && end <= alike.life().upper())
            .filter(alike -> alike.life().upper() <= until)
            .toList();
    double left = random.nextDouble() * around.stream().mapToDouble(Alike::weight).sum();
    for (Alike alike : around) {
      left -= alike.weight();
      if (left < 0) {
        return alike.life();
      }
    }
    return Life.failedBetween(
        Stream.ofNullable(ages.lower(end)).findFirst().orElse(0.0),
        Stream.ofNullable(ages.ceiling(end)).findFirst().orElse(until));
  }
}
