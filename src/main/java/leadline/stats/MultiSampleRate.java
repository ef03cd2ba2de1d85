package leadline.stats;

import java.util.Optional;

/**
 * The mean and spread of a rate that differs from unit to unit, as the handbooks of offshore
 * reliability data give them. Source: Spjotvoll 1985, Estimation of failure rate from reliability
 * data bases; Rausand and Hoyland 2004, System Reliability Theory, section on multi-sample problems
 * (formulas from memory).
 *
 * @param pooled all events over all exposure
 * @param dispersion the sum of (n - pooled t)^2 / t, per unit of exposure
 * @param moment the moment estimate of the variance between units; may be negative
 * @param variance the variance used, 0 or more
 * @param mean of the rates, weighted by the inverse of each one's variance
 */
public record MultiSampleRate(
    double pooled, double dispersion, double moment, double variance, double mean) {

  private static final double TAIL = 0.05;

  /**
   * Empty of fewer than two units, and without an event. Where the moment estimate of the variance
   * is not positive, the mean square of the units' rates about the pooled one takes its place.
   */
  public static Optional<MultiSampleRate> of(RateSample sample) {
    PoissonRate pooled = sample.pooled();
    int others = sample.degreesOfFreedom();
    if (others == 0 || pooled.events() == 0) {
      return Optional.empty();
    }
    double rate = pooled.rate();
    double total = pooled.exposure();
    double squares = sample.sum(unit -> unit.exposure() * unit.exposure());
    double dispersion =
        sample.sum(
            unit -> RateSample.square(unit.events() - rate * unit.exposure()) / unit.exposure());
    double moment = (dispersion - others * rate) * total / (total * total - squares);
    double variance =
        moment > 0 ? moment : sample.sum(unit -> RateSample.square(unit.rate() - rate)) / others;
    return Optional.of(
        new MultiSampleRate(rate, dispersion, moment, variance, mean(sample, variance)));
  }

  private static double mean(RateSample sample, double variance) {
    double rate = sample.pooled().rate();
    double weights = sample.sum(unit -> 1 / (rate / unit.exposure() + variance));
    return sample.sum(unit -> unit.rate() / (rate / unit.exposure() + variance)) / weights;
  }

  /** Whether the moment estimate was of no use. */
  public boolean fallback() {
    return moment <= 0;
  }

  /** Plain pooling, as if all units had one rate. */
  public MultiSampleRate withoutSpread() {
    return new MultiSampleRate(pooled, dispersion, moment, 0, pooled);
  }

  /** Of a gamma distribution with this mean and variance; infinite where they do not vary. */
  public double gammaShape() {
    return mean * mean / variance;
  }

  /** The gamma distribution's rate parameter, in the unit of exposure. */
  public double gammaExposure() {
    return mean / variance;
  }

  /** From the 5 % to the 95 % quantile of the units' rates, if they are gamma distributed. */
  public Limits ninetyPercentRange() {
    return variance == 0
        ? new Limits(mean, mean)
        : new Limits(
            Quantiles.gamma(gammaShape(), TAIL) / gammaExposure(),
            Quantiles.gamma(gammaShape(), 1 - TAIL) / gammaExposure());
  }
}
