package leadline.stats;

/**
 * What one renewal costs, in any unit.
 *
 * @param preventive of a planned renewal, finite and more than 0
 * @param failure of a renewal upon failure with all that the failure entails, finite and more than
 *     0
 */
public record ReplacementCosts(double preventive, double failure) {

  /**
   * @throws IllegalArgumentException if a cost is not finite and positive
   */
  public ReplacementCosts {
    if (!(preventive > 0
        && Double.isFinite(preventive)
        && failure > 0
        && Double.isFinite(failure))) {
      throw new IllegalArgumentException(
          "costs must be finite and more than 0: " + preventive + ", " + failure);
    }
  }
}
