package leadline.stats;

import java.util.Optional;

/**
 * The mean of durations cut off at a horizon. Source: Irwin 1949, J. Hygiene 47:188; Klein and
 * Moeschberger 2003, Survival Analysis, section 4.5.
 *
 * @param mean in the unit of the durations, 0 to {@code horizon}
 * @param standardError in the unit of the durations
 * @param horizon in the unit of the durations
 */
public record RestrictedMean(double mean, double standardError, double horizon) {

  /**
   * Normal limits clipped to 0 and the horizon, in the unit of the durations, approximate. Source:
   * Klein and Moeschberger 2003, Survival Analysis, section 4.5.
   */
  public Limits limits(Confidence confidence) {
    return Limits.around(mean, confidence.normalQuantile() * standardError, 0, horizon);
  }

  /**
   * Limits normal on the scale of the logarithm of mean / (horizon - mean) and so within 0 and the
   * horizon, in the unit of the durations, approximate; empty where the standard error is 0, or the
   * mean 0 or the horizon, for then nothing is known of the spread. Source: the delta method, as
   * for a share in Meeker and Escobar 1998, Statistical Methods for Reliability Data, section 3.6.
   */
  public Optional<Limits> logitLimits(Confidence confidence) {
    if (!(standardError > 0 && mean > 0 && mean < horizon)) {
      return Optional.empty();
    }
    double lost = horizon - mean;
    double factor = Math.exp(confidence.normalQuantile() * standardError * horizon / (mean * lost));
    return Optional.of(
        new Limits(
            horizon * mean / (mean + lost * factor), horizon * mean / (mean + lost / factor)));
  }
}
