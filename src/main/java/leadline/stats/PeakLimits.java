package leadline.stats;

import java.util.HashMap;
import java.util.Map;
import leadline.stats.ProfileLikelihood.Side;

/**
 * Estimates of a distribution's quantities, and limits by the likelihood around its peak. The
 * region of a confidence is kept, since its making is what costs. Not safe for use by several
 * threads at once.
 */
final class PeakLimits {

  private final LikelihoodSurface surface;
  private final Peak peak;
  private final Charts charts;
  private final Map<Confidence, LikelihoodRegion> regions = new HashMap<>();

  PeakLimits(LikelihoodSurface surface, Peak peak, Charts charts) {
    this.surface = surface;
    this.peak = peak;
    this.charts = charts;
  }

  private interface LimitOnSide {
    double of(ProfileLikelihood profile, Side side);
  }

  /** Positive infinity where the quantity is infinite at the peak. */
  double estimate(LifeQuantity quantity) {
    Chart chart = quantity.among(charts);
    return chart.isFiniteAt(peak.shape())
        ? chart.quantity(chart.coordinate(peak.shape(), peak.offset()))
        : Double.POSITIVE_INFINITY;
  }

  Limits wald(LifeQuantity quantity, Confidence confidence) {
    double standardErrors = confidence.normalQuantile();
    return limits(
        quantity.among(charts),
        (profile, side) ->
            profile.estimate() + side.signed(standardErrors * profile.standardError()));
  }

  Limits profile(LifeQuantity quantity, Confidence confidence) {
    double standardErrors = confidence.normalQuantile();
    Chart chart = quantity.among(charts);
    if (chart.isStraight()) {
      return limits(chart, (profile, side) -> profile.limit(side, standardErrors));
    }
    LikelihoodRegion region =
        regions.computeIfAbsent(
            confidence, level -> new LikelihoodRegion(surface, peak, standardErrors));
    return limits(chart, (profile, side) -> region.extreme(chart, profile, side));
  }

  /** Where the estimate is at an end of the quantity to the last digit, nothing limits it. */
  private static double numberOrEnd(double coordinate, Side side) {
    return Double.isNaN(coordinate) ? side.signed(Double.POSITIVE_INFINITY) : coordinate;
  }

  private Limits limits(Chart chart, LimitOnSide limit) {
    if (!chart.isFiniteAt(peak.shape())) {
      return new Limits(0, Double.POSITIVE_INFINITY);
    }
    ProfileLikelihood profile = new ProfileLikelihood(surface, chart, peak);
    double one = chart.quantity(numberOrEnd(limit.of(profile, Side.BELOW), Side.BELOW));
    double other = chart.quantity(numberOrEnd(limit.of(profile, Side.ABOVE), Side.ABOVE));
    return new Limits(Math.min(Math.min(one, other), Double.MAX_VALUE), Math.max(one, other));
  }
}
