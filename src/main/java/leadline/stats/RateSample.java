package leadline.stats;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.hipparchus.special.Gamma;

/**
 * Poisson rates of several units, each with its own events and exposure.
 *
 * @param rates one for each unit, all exposures in the same unit of time; at least one
 */
public record RateSample(List<PoissonRate> rates) {

  /**
   * @throws IllegalArgumentException if there is no rate
   */
  public RateSample {
    rates = List.copyOf(rates);
    if (rates.isEmpty()) {
      throw new IllegalArgumentException("a sample needs a rate");
    }
  }

  /** All events over all exposure: the rate if that of all units is the same. */
  public PoissonRate pooled() {
    return new PoissonRate(
        rates.stream().mapToLong(PoissonRate::events).reduce(0, Math::addExact),
        sum(PoissonRate::exposure));
  }

  /**
   * Chi-squared of the events against those expected at the pooled rate, the sum of (n - m)^2 / m;
   * empty without an event. Source: Cox and Lewis 1966, The Statistical Analysis of Series of
   * Events, section 9.3.
   */
  public OptionalDouble chiSquared() {
    double rate = pooled().rate();
    return rate == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            sum(unit -> square(unit.events() - rate * unit.exposure()) / (rate * unit.exposure())));
  }

  /** Units less one. */
  public int degreesOfFreedom() {
    return rates.size() - 1;
  }

  /**
   * The chance of rates that differ so much or more if the true ones are equal, approximate where
   * fewer than about five events are expected of each; empty without an event, or of a single unit.
   * Source: as for {@link #chiSquared()}.
   */
  public OptionalDouble homogeneity() {
    OptionalDouble chiSquared = chiSquared();
    return chiSquared.isEmpty() || degreesOfFreedom() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            Gamma.regularizedGammaQ(degreesOfFreedom() / 2.0, chiSquared.getAsDouble() / 2));
  }

  /** The logarithm of the chance of these events if all units share the pooled rate. */
  public double poissonLogLikelihood() {
    double rate = pooled().rate();
    return sum(
        unit -> {
          double mean = rate * unit.exposure();
          double loss = mean + Gamma.logGamma(unit.events() + 1.0);
          return unit.events() == 0 ? -mean : unit.events() * Math.log(mean) - loss;
        });
  }

  /**
   * The sum of (n - m)^2 - n: positive where the events vary more than a common Poisson rate lets
   * them. Source: Dean and Lawless 1989, J. Am. Stat. Assoc. 84:467, up to its scale.
   */
  public double overdispersionScore() {
    double rate = pooled().rate();
    return sum(unit -> square(unit.events() - rate * unit.exposure()) - unit.events());
  }

  double sum(ToDoubleFunction<PoissonRate> term) {
    return rates.stream().mapToDouble(term).sum();
  }

  static double square(double value) {
    return value * value;
  }
}
