package leadline.stats;

/**
 * The plane over which a gamma likelihood is searched: the shape, and what the logarithm of the
 * mean falls short of a centre, times a factor that makes the second near normal at any shape: near
 * the shape where that is small, and near its root, 1 over the standard deviation of log age, where
 * it is large.
 */
final class GammaPlane {

  private GammaPlane() {}

  /** The factor. */
  static double stretch(double shape) {
    return shape / Math.sqrt(1 + shape);
  }

  /**
   * From derivatives by the shortfall of the log mean to those on the plane.
   *
   * @param offset on the plane
   */
  static void stretch(double shape, double offset, PlaneJet jet) {
    double stretch = stretch(shape);
    double rate = 1 / shape - 0.5 / (1 + shape);
    double rateByShape = 0.5 / ((1 + shape) * (1 + shape)) - 1 / (shape * shape);
    double shortfall = offset / stretch;
    double slope = -shortfall * rate;
    jet.set(
        jet.value,
        jet.byShape + jet.byOffset * slope,
        jet.byOffset / stretch,
        jet.byShapeTwice
            + slope * (2 * jet.byBoth + jet.byOffsetTwice * slope)
            + jet.byOffset * shortfall * (rate * rate - rateByShape),
        (jet.byBoth + jet.byOffsetTwice * slope - jet.byOffset * rate) / stretch,
        jet.byOffsetTwice / (stretch * stretch));
  }
}
