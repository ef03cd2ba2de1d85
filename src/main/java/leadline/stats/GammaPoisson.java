package leadline.stats;

import java.util.Optional;
import java.util.stream.LongStream;
import org.hipparchus.special.Gamma;

/**
 * Rates of units drawn from a gamma distribution, which events of each then follow as a Poisson
 * process. Source: Gaver and O'Muircheartaigh 1987, Technometrics 29:1.
 *
 * @param shape of the gamma distribution of rates, finite and more than 0
 * @param exposure its rate parameter, in the unit of exposure, finite and more than 0: what is
 *     known beforehand weighs as much as so much exposure
 */
public record GammaPoisson(double shape, double exposure) {

  /** Logarithms of the shape between which maxima are looked for. */
  private static final double SMALLEST = -15;

  private static final double LARGEST = 25;
  private static final double STEP = 0.25;

  /** Of the log likelihood: a gain so small is none. */
  private static final double ROUNDING = 1e-10;

  /**
   * @throws IllegalArgumentException if a parameter is not finite and positive
   */
  public GammaPoisson {
    if (!(shape > 0 && Double.isFinite(shape) && exposure > 0 && Double.isFinite(exposure))) {
      throw new IllegalArgumentException(
          "shape and exposure must be finite and more than 0: " + shape + ", " + exposure);
    }
  }

  /**
   * By maximum likelihood of the negative-binomial margin: the mean is solved for at each shape,
   * and every fall of the profile score through zero is followed to its root, the likeliest of
   * which is taken. Empty where no such maximum is likelier than one common rate: then the spread
   * between units is estimated to be 0 (also without any event).
   */
  public static Optional<GammaPoisson> fit(RateSample sample) {
    Optional<GammaPoisson> best = Optional.empty();
    double likelihood = sample.poissonLogLikelihood();
    if (sample.pooled().events() == 0) {
      return best;
    }
    for (double low = SMALLEST; low < LARGEST; low += STEP) {
      double high = Math.exp(low + STEP);
      if (score(sample, Math.exp(low)) > 0 && score(sample, high) <= 0) {
        double shape = RisingRoot.of(value -> -score(sample, value), Math.exp(low));
        GammaPoisson candidate = new GammaPoisson(shape, shape / mean(sample, shape));
        if (candidate.logLikelihood(sample) > likelihood + ROUNDING) {
          likelihood = candidate.logLikelihood(sample);
          best = Optional.of(candidate);
        }
      }
    }
    return best;
  }

  /** The mean of rates that is likeliest with a shape: the root of a falling function. */
  private static double mean(RateSample sample, double shape) {
    return RisingRoot.of(
        mean ->
            sample.sum(
                unit ->
                    (mean * unit.exposure() - unit.events()) / (shape + mean * unit.exposure())),
        sample.pooled().rate());
  }

  /** The derivative of the log likelihood by the shape, at the mean likeliest with it. */
  private static double score(RateSample sample, double shape) {
    double mean = mean(sample, shape);
    return sample.sum(
        unit ->
            LongStream.range(0, unit.events()).mapToDouble(event -> 1 / (shape + event)).sum()
                - Math.log1p(mean * unit.exposure() / shape));
  }

  /** The logarithm of the chance of these events, a negative-binomial one for each unit. */
  public double logLikelihood(RateSample sample) {
    return sample.sum(this::logLikelihood);
  }

  /** Summed event by event: differences of log-gamma functions lose all digits of a large shape. */
  double logLikelihood(PoissonRate unit) {
    double ratio = unit.exposure() / exposure;
    double rising =
        LongStream.range(0, unit.events())
            .mapToDouble(event -> Math.log((shape + event) * ratio / (event + 1)))
            .sum();
    return rising - (shape + unit.events()) * Math.log1p(ratio);
  }

  /**
   * The chance of a likelihood so much higher than with one common rate, or more, if the units have
   * one: that rate lies on the edge of the model, so half the chance of chi-squared with one degree
   * of freedom. Source: Self and Liang 1987, J. Am. Stat. Assoc. 82:605.
   *
   * @param ratio twice the difference of the log likelihoods, 0 or more
   */
  public static double chanceOfLikelihoodRatio(double ratio) {
    return Gamma.regularizedGammaQ(0.5, ratio / 2) / 2;
  }

  /** Of the units' rates, per unit of exposure. */
  public double mean() {
    return shape / exposure;
  }

  /** Of the units' rates, per unit of exposure. */
  public double standardDeviation() {
    return Math.sqrt(shape) / exposure;
  }

  /** What is known of a unit's rate once its own events are: again a gamma distribution. */
  public GammaPoisson after(PoissonRate unit) {
    return new GammaPoisson(shape + unit.events(), exposure + unit.exposure());
  }

  /**
   * Equal-tailed limits of a rate drawn from the distribution. Those of a unit after a fit take the
   * parameters for known and are too narrow: {@link IntegratedShrinkage} does not.
   */
  public Limits limits(Confidence confidence) {
    return new Limits(
        Quantiles.gamma(shape, confidence.eachTail()) / exposure,
        Quantiles.gamma(shape, 1 - confidence.eachTail()) / exposure);
  }

  /** The chance of a rate at most so high. */
  double probabilityUpTo(double rate) {
    return Gamma.regularizedGammaP(shape, exposure * rate);
  }
}
