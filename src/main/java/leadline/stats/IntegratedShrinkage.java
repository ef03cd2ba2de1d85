package leadline.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Rates of units shrunk towards their common mean, with the mean and the spread between units
 * integrated out rather than taken for known: a gamma-Poisson model whose weight on the mean for a
 * unit of average exposure is uniform between 0 and 1, and whose mean m has the prior 1 / sqrt(m).
 * Defined without any event too. Source: Christiansen and Morris 1997, J. Am. Stat. Assoc. 92:618
 * (uniform shrinkage; from memory); the square root is Jeffreys' prior of a Poisson rate.
 *
 * <p>COVERAGE
 */
public final class IntegratedShrinkage {

  private static final int WEIGHTS_OF_MEAN = 24;

  /** Steps of the logarithm of the mean, in its standard deviations. */
  private static final double STEP = 0.5;

  /** Steps end where the density is smaller than the largest by this power of e. */
  private static final double NEGLIGIBLE = 20;

  /** The least logarithm of a likely mean and of a density. */
  private static final double LEAST = -700;

  /** A rate so much smaller than its mean is none. */
  private static final double NOTHING = 1e-12;

  private record Node(GammaPoisson model, double logWeight) {}

  private final List<Node> nodes;

  private IntegratedShrinkage(List<Node> nodes) {
    double largest = nodes.stream().mapToDouble(Node::logWeight).max().orElse(LEAST);
    List<Node> kept =
        nodes.stream().filter(node -> node.logWeight() > largest - NEGLIGIBLE).toList();
    double total = kept.stream().mapToDouble(node -> Math.exp(node.logWeight() - largest)).sum();
    this.nodes =
        kept.stream()
            .map(node -> new Node(node.model(), node.logWeight() - largest - Math.log(total)))
            .toList();
  }

  /** Of all units together, each weighing by its exposure. */
  public static IntegratedShrinkage of(RateSample sample) {
    return of(sample, WEIGHTS_OF_MEAN);
  }

  static IntegratedShrinkage of(RateSample sample, int weightsOfMean) {
    List<Node> nodes = new ArrayList<>();
    double average = sample.pooled().exposure() / sample.rates().size();
    GaussIntegrator uniform = new GaussIntegratorFactory().legendre(weightsOfMean, 0, 1);
    for (int index = 0; index < uniform.getNumberOfPoints(); index++) {
      // Squared, because near 0 the density grows without bound, like one over a square root.
      double root = uniform.getPoint(index);
      double weightOfMean = root * root;
      double exposure = average * weightOfMean / (1 - weightOfMean);
      addMeans(sample, exposure, Math.log(uniform.getWeight(index) * root), nodes);
    }
    return new IntegratedShrinkage(nodes);
  }

  private static void addMeans(
      RateSample sample, double exposure, double logWeight, List<Node> nodes) {
    PoissonRate pooled = sample.pooled();
    double centre = (pooled.events() + 0.5) / pooled.exposure();
    double information =
        0.5
            + sample.sum(
                unit -> centre * unit.exposure() * exposure / (exposure + unit.exposure()));
    double step = STEP / Math.sqrt(information);
    double largest = LEAST;
    for (int direction : new int[] {-1, 1}) {
      double logMean = Math.log(centre) + (direction > 0 ? step : 0);
      double density = Double.POSITIVE_INFINITY;
      while (density > largest - NEGLIGIBLE && Math.abs(logMean) < -LEAST) {
        GammaPoisson model = new GammaPoisson(Math.exp(logMean) * exposure, exposure);
        density = model.logLikelihood(sample) + 0.5 * logMean;
        largest = Math.max(largest, density);
        nodes.add(new Node(model, density + logWeight + Math.log(step)));
        logMean += direction * step;
      }
    }
  }

  /** What a unit's rate is expected to be, per unit of exposure. */
  public double mean(PoissonRate unit) {
    return nodes.stream()
        .mapToDouble(node -> Math.exp(node.logWeight()) * node.model().after(unit).mean())
        .sum();
  }

  /**
   * Equal-tailed limits of a unit's rate, per unit of exposure; the lower may be 0 where no unit
   * had an event.
   */
  public Limits limits(PoissonRate unit, Confidence confidence) {
    List<Node> posterior =
        nodes.stream()
            .map(node -> new Node(node.model().after(unit), node.logWeight()))
            .sorted(Comparator.comparingDouble(Node::logWeight).reversed())
            .toList();
    return new Limits(
        quantile(posterior, confidence.eachTail(), mean(unit)),
        quantile(posterior, 1 - confidence.eachTail(), mean(unit)));
  }

  private static double quantile(List<Node> posterior, double probability, double guess) {
    if (probabilityUpTo(NOTHING * guess, posterior) >= probability) {
      return 0;
    }
    return RisingRoot.of(rate -> probabilityUpTo(rate, posterior) - probability, guess);
  }

  /** The chance that a unit's rate is at most so high. */
  double probabilityUpTo(double rate, PoissonRate unit) {
    return probabilityUpTo(
        rate,
        nodes.stream().map(node -> new Node(node.model().after(unit), node.logWeight())).toList());
  }

  private static double probabilityUpTo(double rate, List<Node> posterior) {
    return posterior.stream()
        .mapToDouble(node -> Math.exp(node.logWeight()) * node.model().probabilityUpTo(rate))
        .sum();
  }
}
