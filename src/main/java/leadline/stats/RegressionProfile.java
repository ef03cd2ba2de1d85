package leadline.stats;

import leadline.stats.ProfileLikelihood.Side;
import leadline.stats.RegressionQuantity.Placing;
import org.hipparchus.linear.RealVector;

/** How the likelihood of a regression falls off with one quantity, the rest fitted anew. */
final class RegressionProfile {

  private static final int MOST_STEPS = 200;

  /** Of the way from the start: the step after one so small is lost in rounding. */
  private static final double LAST_STEP = 1e-9;

  /** Of the logarithm: beyond, no number has one. */
  private static final double FARTHEST = 700;

  private final RegressionLikelihood likelihood;
  private final Placing placing;
  private final RealVector start;

  /**
   * @param start parameters inside the limits
   */
  RegressionProfile(RegressionLikelihood likelihood, Placing placing, RealVector start) {
    this.likelihood = likelihood;
    this.placing = placing;
    this.start = start;
  }

  /**
   * The logarithm at which the likelihood has fallen to a height; infinite on the side where it
   * never does. Newton's steps, kept between points known to be inside and outside.
   *
   * @param firstStep how far to look first, more than 0
   */
  double fallen(Side side, double height, double firstStep) {
    double from = placing.logarithm(start);
    double inside = from;
    double outside = side.signed(Double.POSITIVE_INFINITY);
    double point = from + side.signed(firstStep);
    RealVector parameters = start;
    for (int step = 0; step < MOST_STEPS; step++) {
      Restriction where = placing.where(point);
      Ascent.Point highest = new Ascent(likelihood, where).highest(where.free(parameters));
      double slope = highest.slopes().gradient().dotProduct(placing.along(highest.all()));
      if (highest.value() >= height) {
        inside = point;
        parameters = highest.all();
        if (Math.abs(point - from) > FARTHEST) {
          return side.signed(Double.POSITIVE_INFINITY);
        }
      } else {
        outside = point;
      }
      double newton = point + (height - highest.value()) / slope;
      if (Math.abs(newton - point) <= LAST_STEP * Math.abs(newton - from)) {
        return newton;
      }
      point = next(newton, from, inside, outside, side);
    }
    return point;
  }

  private static double next(double newton, double from, double inside, double outside, Side side) {
    if (Double.isInfinite(outside)) {
      double most = from + 2 * (inside - from);
      return side.signed(newton) > side.signed(inside)
          ? side.signed(Math.min(side.signed(newton), side.signed(most)))
          : most;
    }
    return (newton - inside) * (newton - outside) < 0 ? newton : (inside + outside) / 2;
  }
}
