package leadline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import leadline.stats.LifeData.Alike;

/**
 * Logarithms of ages, from their middle, by what each does in the likelihood.
 *
 * @param centre the logarithm of age that counts as 0
 * @param survival right-censored ages, and with a negative weight those of entry
 * @param intervalUpper in the order of {@code intervalLower}
 */
record LogAges(
    double centre, Ages exact, Ages survival, Ages left, Ages intervalLower, Ages intervalUpper) {

  /** Logarithms of ages, and how often each. */
  static final class Ages {

    final double[] logAge;
    final double[] weight;

    private Ages(double[] logAge, double[] weight) {
      this.logAge = logAge;
      this.weight = weight;
    }

    private static Ages of(List<double[]> agesWithWeight, double centre) {
      return new Ages(
          agesWithWeight.stream().mapToDouble(term -> Math.log(term[0]) - centre).toArray(),
          agesWithWeight.stream().mapToDouble(term -> term[1]).toArray());
    }
  }

  static LogAges of(List<Alike> lives) {
    double centre = centre(lives);
    TreeMap<Double, Double> survival = new TreeMap<>();
    List<double[]> exact = new ArrayList<>();
    List<double[]> left = new ArrayList<>();
    List<double[]> lower = new ArrayList<>();
    List<double[]> upper = new ArrayList<>();
    for (Alike alike : lives) {
      Life life = alike.life();
      double weight = alike.weight();
      if (life instanceof Life.Outlived) {
        survival.merge(life.lower(), weight, Double::sum);
      } else if (life instanceof Life.FailedAt) {
        exact.add(new double[] {life.upper(), weight});
      } else if (life.lower() == 0) {
        left.add(new double[] {life.upper(), weight});
      } else {
        lower.add(new double[] {life.lower(), weight});
        upper.add(new double[] {life.upper(), weight});
      }
      survival.merge(life.entry(), -weight, Double::sum);
    }
    survival.remove(0.0);
    List<double[]> net = new ArrayList<>();
    survival.forEach((age, weight) -> net.add(new double[] {age, weight}));
    net.removeIf(term -> term[1] == 0);
    return new LogAges(
        centre,
        Ages.of(exact, centre),
        Ages.of(net, centre),
        Ages.of(left, centre),
        Ages.of(lower, centre),
        Ages.of(upper, centre));
  }

  /** From the least to the greatest logarithm of age; 0 without any. */
  double range() {
    double least = 0;
    double greatest = 0;
    for (Ages ages : List.of(exact, survival, left, intervalLower, intervalUpper)) {
      for (double logAge : ages.logAge) {
        least = Math.min(least, logAge);
        greatest = Math.max(greatest, logAge);
      }
    }
    return greatest - least;
  }

  private static double centre(List<Alike> lives) {
    double sum = 0;
    double weight = 0;
    for (Alike alike : lives) {
      double age = alike.failed() ? alike.life().upper() : alike.life().lower();
      if (age > 0) {
        sum += alike.weight() * Math.log(age);
        weight += alike.weight();
      }
    }
    return weight == 0 ? 0 : sum / weight;
  }
}
