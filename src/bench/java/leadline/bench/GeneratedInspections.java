package leadline.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import leadline.stats.ObservedInterval;

/**
 * Weibull lives of shape 1.7 and scale 9,000 hours, seen at ages that are multiples of 50 hours.
 */
final class GeneratedInspections {

  private static final long GENERATOR = 20_264;
  private static final int LIVES = 10_000;
  private static final int AGES = 500;
  private static final double AGES_APART = 50;

  private GeneratedInspections() {}

  /** Each seen at so many ages, drawn from all. */
  static List<ObservedInterval> at(int looks) {
    Random random = new Random(GENERATOR);
    List<ObservedInterval> lives = new ArrayList<>();
    for (int count = 0; count < LIVES; count++) {
      double end = 9000 * Math.pow(-Math.log1p(-random.nextDouble()), 1 / 1.7);
      double[] ages =
          random.ints(looks, 1, AGES + 1).mapToDouble(age -> age * AGES_APART).sorted().toArray();
      double alive = Arrays.stream(ages).filter(age -> age < end).max().orElse(0);
      double ended =
          Arrays.stream(ages).filter(age -> age >= end).min().orElse(Double.POSITIVE_INFINITY);
      lives.add(new ObservedInterval(alive, ended, 1));
    }
    return lives;
  }
}
