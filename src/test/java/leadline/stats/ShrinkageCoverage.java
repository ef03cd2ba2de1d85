package leadline.stats;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.hipparchus.random.RandomDataGenerator;

/**
 * How often the nominal 90 % limits of shrunken rates enclose the true one, by simulation from the
 * model: units' rates gamma distributed about 1 with a coefficient of variation, exposures uniform
 * from half to one and a half times the mean. Each cell draws from a generator of its own.
 */
final class ShrinkageCoverage {

  static final int[] UNITS = {3, 5, 10, 30};
  static final double[] VARIATIONS = {0, 0.25, 0.5, 1, 1.5};
  static final double[] EVENTS_PER_UNIT = {1, 5};

  private static final long GENERATOR = 20_261;

  private final int replications;

  ShrinkageCoverage(int replications) {
    this.replications = replications;
  }

  /** Prints the table that the limits' documentation shows; the argument is the replications. */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    ShrinkageCoverage coverage = new ShrinkageCoverage(Integer.parseInt(arguments[0]));
    for (double variation : VARIATIONS) {
      out.printf("%.2f |", variation);
      for (int units : UNITS) {
        for (double events : EVENTS_PER_UNIT) {
          out.printf(" %.1f", 100 * coverage.of(units, variation, events));
        }
      }
      out.printf(" | %.1f%n", 100 * coverage.of(variation));
    }
  }

  /** Averaged over the numbers of units and of events. */
  double of(double variation) {
    double sum = 0;
    for (int units : UNITS) {
      for (double events : EVENTS_PER_UNIT) {
        sum += of(units, variation, events);
      }
    }
    return sum / (UNITS.length * EVENTS_PER_UNIT.length);
  }

  double of(int units, double variation, double events) {
    RandomDataGenerator random = new RandomDataGenerator(GENERATOR);
    int covered = 0;
    for (int replication = 0; replication < replications; replication++) {
      List<PoissonRate> rates = new ArrayList<>();
      List<Double> truths = new ArrayList<>();
      for (int unit = 0; unit < units; unit++) {
        double shape = 1 / (variation * variation);
        double truth = variation == 0 ? 1 : random.nextGamma(shape, 1 / shape);
        double exposure = events * random.nextUniform(0.5, 1.5);
        truths.add(truth);
        rates.add(new PoissonRate(poisson(truth * exposure, random), exposure));
      }
      IntegratedShrinkage shrinkage = IntegratedShrinkage.of(new RateSample(rates));
      for (int unit = 0; unit < units; unit++) {
        double below = shrinkage.probabilityUpTo(truths.get(unit), rates.get(unit));
        covered += below > 0.05 && below < 0.95 ? 1 : 0;
      }
    }
    return (double) covered / (replications * units);
  }

  private static int poisson(double mean, RandomDataGenerator random) {
    return mean < 1e-300
        ? 0
        : new PoissonDistribution(mean).inverseCumulativeProbability(random.nextDouble());
  }
}
