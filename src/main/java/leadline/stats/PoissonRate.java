package leadline.stats;

import java.util.Optional;
import org.hipparchus.special.Gamma;

/**
 * The rate of events that arrive independently at a constant rate, and its reciprocal, the mean
 * time between them. Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 8.4.5.1.
 *
 * @param events how many were seen, 0 or more
 * @param exposure the time under observation, in the caller's unit, finite and more than 0
 */
public record PoissonRate(long events, double exposure) {

  /**
   * @throws IllegalArgumentException if events are negative, or exposure is not finite and positive
   */
  public PoissonRate {
    if (events < 0) {
      throw new IllegalArgumentException("events must not be negative: " + events);
    }
    if (!(exposure > 0 && Double.isFinite(exposure))) {
      throw new IllegalArgumentException("exposure must be finite and more than 0: " + exposure);
    }
  }

  /** Events per unit of exposure: the maximum-likelihood estimate. */
  public double rate() {
    return events / exposure;
  }

  /**
   * Exact two-sided limits of the rate, per unit of exposure; the lower is 0 at no events. Source:
   * Garwood 1936, Biometrika 28:437.
   */
  public Limits limits(Confidence confidence) {
    return new Limits(lowerBeyond(confidence.eachTail()), upperBeyond(confidence.eachTail()));
  }

  /**
   * Two-sided limits that count half the chance of the events seen: narrower than the exact ones,
   * and right on average rather than always; the lower is 0 at no events. Source: Lancaster 1961,
   * J. Am. Stat. Assoc. 56:223; Cohen and Yang 1994, Stat. Med. 13:2189.
   */
  public Limits midPLimits(Confidence confidence) {
    double tail = confidence.eachTail();
    double guess = Math.max(events, 1);
    double upper = RisingRoot.of(mean -> tail - 1 + midChanceOfMore(mean), guess);
    return new Limits(
        events == 0 ? 0 : RisingRoot.of(mean -> midChanceOfMore(mean) - tail, guess) / exposure,
        upper / exposure);
  }

  /** Of more events than seen, and half that of as many. */
  private double midChanceOfMore(double mean) {
    double asMany = events == 0 ? 1 : Gamma.regularizedGammaP((double) events, mean);
    return (asMany + Gamma.regularizedGammaP(events + 1.0, mean)) / 2;
  }

  /**
   * The exact one-sided lower limit of the rate, per unit of exposure; 0 at no events. Source:
   * Garwood 1936, Biometrika 28:437.
   */
  public double lowerLimit(Confidence confidence) {
    return lowerBeyond(confidence.oneTail());
  }

  /**
   * The exact one-sided upper limit of the rate, per unit of exposure. Source: Garwood 1936,
   * Biometrika 28:437.
   */
  public double upperLimit(Confidence confidence) {
    return upperBeyond(confidence.oneTail());
  }

  /**
   * Exposure per event, in the unit of exposure; positive infinity at no events. Source:
   * NIST/SEMATECH e-Handbook 8.4.5.1.
   */
  public double meanTime() {
    return exposure / events;
  }

  /**
   * Exact two-sided limits of the mean time when observation ended at a set time, in the unit of
   * exposure; the upper is positive infinity at no events. Source: NIST/SEMATECH e-Handbook
   * 8.4.5.1, chi-squared with 2r + 2 and 2r degrees of freedom.
   */
  public Limits meanTimeLimits(Confidence confidence) {
    Limits rate = limits(confidence);
    return new Limits(1 / rate.upper(), 1 / rate.lower());
  }

  /**
   * Exact two-sided limits of the mean time when observation ended with the last event, in the unit
   * of exposure; empty at no events, for then none ended it. Source: NIST/SEMATECH e-Handbook
   * 8.4.5.1, chi-squared with 2r degrees of freedom.
   */
  public Optional<Limits> meanTimeLimitsEndedByEvent(Confidence confidence) {
    if (events == 0) {
      return Optional.empty();
    }
    double tail = confidence.eachTail();
    return Optional.of(
        new Limits(
            exposure / Quantiles.gamma((double) events, 1 - tail),
            exposure / Quantiles.gamma((double) events, tail)));
  }

  private double lowerBeyond(double tail) {
    return events == 0 ? 0 : Quantiles.gamma((double) events, tail) / exposure;
  }

  private double upperBeyond(double tail) {
    return Quantiles.gamma(events + 1.0, 1 - tail) / exposure;
  }
}
