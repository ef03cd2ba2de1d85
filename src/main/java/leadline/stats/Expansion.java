package leadline.stats;

/**
 * A function of (shape, offset) with its gradient and second derivatives at one point.
 *
 * @param byShape the derivative, and so on
 */
record Expansion(
    double value,
    double byShape,
    double byOffset,
    double byShapeTwice,
    double byBoth,
    double byOffsetTwice) {

  private static final double ROUNDING = 1e-12;

  boolean isFinite() {
    return Double.isFinite(value)
        && Double.isFinite(byShape)
        && Double.isFinite(byOffset)
        && Double.isFinite(byShapeTwice)
        && Double.isFinite(byBoth)
        && Double.isFinite(byOffsetTwice);
  }

  /** Of minus the second derivatives. */
  double determinant() {
    return byShapeTwice * byOffsetTwice - byBoth * byBoth;
  }

  /** Falls off on every side, by more than rounding makes of a ridge. */
  boolean isConcave() {
    return byOffsetTwice < 0 && determinant() > ROUNDING * byShapeTwice * byOffsetTwice;
  }
}
