package leadline.stats;

/**
 * The distribution of z = (log age - mu) / sigma, whose survival falls from 1 to 0 over all z. Its
 * density is log-concave, so that without delayed entry the likelihood is concave in (1 / sigma,
 * -mu / sigma): Burridge 1981, J. R. Stat. Soc. B 43:41.
 */
interface StandardForm {

  /** Fills in the logarithm of the density. */
  void logDensity(double z, Jet jet);

  /** Fills in the logarithm of the survival, with small relative error also where it is near 0. */
  void logSurvival(double z, Jet jet);

  /** The z at which the survival has this logarithm, which is below 0. */
  double atLogSurvival(double logSurvival);

  /**
   * Fills in the logarithm of the mean age at mu = 0, as a function of 1 / sigma.
   *
   * @param shape 1 / sigma, more than {@link #leastShapeWithMean()}
   */
  void logMean(double shape, Jet jet);

  /** The mean is infinite where 1 / sigma is this or less. */
  double leastShapeWithMean();

  /** The z below which a share of lives has ended. */
  default double quantile(double share) {
    return atLogSurvival(Math.log1p(-share));
  }
}
