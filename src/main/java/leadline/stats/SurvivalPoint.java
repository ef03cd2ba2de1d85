package leadline.stats;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A step of a Kaplan-Meier curve.
 *
 * @param time when it steps down, in the unit of the durations
 * @param atRisk those watched just before the time
 * @param events those that ended at the time
 * @param survival the share that lasts beyond the time, 0 to 1
 * @param standardError of the survival, by Greenwood's formula (Greenwood 1926; Kaplan and Meier
 *     1958, J. Am. Stat. Assoc. 53:457); empty when nothing survives
 */
public record SurvivalPoint(
    double time, long atRisk, long events, double survival, OptionalDouble standardError) {

  /**
   * Normal limits of the survival, clipped to 0 and 1, approximate; empty when nothing survives.
   * Source: Klein and Moeschberger 2003, Survival Analysis, formula 4.3.1.
   */
  public Optional<Limits> plainLimits(Confidence confidence) {
    return normalMargin(confidence).map(margin -> Limits.around(survival, margin, 0, 1));
  }

  /**
   * Limits of the survival, normal on the scale of log(-log S) and so within 0 and 1, approximate;
   * empty when nothing survives. Source: Kalbfleisch and Prentice 2002, The Statistical Analysis of
   * Failure Time Data, section 1.4.
   */
  public Optional<Limits> logLogLimits(Confidence confidence) {
    return normalMargin(confidence)
        .map(margin -> margin / (survival * -Math.log(survival)))
        .map(
            margin ->
                new Limits(
                    Math.pow(survival, Math.exp(margin)), Math.pow(survival, Math.exp(-margin))));
  }

  private Optional<Double> normalMargin(Confidence confidence) {
    return standardError.isPresent()
        ? Optional.of(confidence.normalQuantile() * standardError.getAsDouble())
        : Optional.empty();
  }
}
