package leadline.stats;

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
}
