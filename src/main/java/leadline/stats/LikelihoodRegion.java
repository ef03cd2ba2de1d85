package leadline.stats;

import leadline.stats.ProfileLikelihood.Side;

/**
 * All pairs of shape and offset that are likely enough, and the extremes over them of a quantity
 * that always grows, or always falls, with the offset: at the ends of the offsets at one of the
 * shapes. For quantities whose equal values lie on curves, on which the likelihood may have several
 * peaks. Source: Meeker and Escobar 1998, Statistical Methods for Reliability Data, section 8.3.
 */
final class LikelihoodRegion {

  /** Steps of log shape over the region, to find near which one the extreme is. */
  private static final int SHAPES = 40;

  /** From the log shape of the peak, where the region has no end: all but 0, or infinite. */
  private static final double FAR = 9;

  /** Of the likelihood, at the ends of the shapes. */
  private static final double ROUNDING = 1e-6;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final double LAST_WIDTH = 1e-9;

  private final LogLikelihood logLikelihood;
  private final Peak peak;
  private final double height;
  private final double leastLogShape;
  private final double greatestLogShape;

  LikelihoodRegion(LogLikelihood logLikelihood, Peak peak, double standardErrors) {
    ShapeChart shapes = new ShapeChart(ShapeChart.Power.SHAPE);
    ProfileLikelihood profile = new ProfileLikelihood(logLikelihood, shapes, peak);
    this.logLikelihood = logLikelihood;
    this.peak = peak;
    this.height = peak.expansion().value() - standardErrors * standardErrors / 2;
    double logShape = Math.log(peak.shape());
    this.leastLogShape = Math.max(logShape - FAR, profile.limit(Side.BELOW, standardErrors));
    this.greatestLogShape = Math.min(logShape + FAR, profile.limit(Side.ABOVE, standardErrors));
  }

  /** Of the quantity, on the chart's scale. */
  double extreme(Chart chart, Side side) {
    double step = (greatestLogShape - leastLogShape) / SHAPES;
    int best = 0;
    double farthest = side.signed(chart.coordinate(peak.shape(), peak.offset()));
    for (int index = 0; index <= SHAPES; index++) {
      double here = side.signed(extremeAt(leastLogShape + index * step, chart, side));
      if (here > farthest) {
        farthest = here;
        best = index;
      }
    }
    double from = leastLogShape + Math.max(0, best - 1) * step;
    double to = leastLogShape + Math.min(SHAPES, best + 1) * step;
    return side.signed(Math.max(farthest, refined(chart, side, from, to)));
  }

  /** By golden sections. */
  private double refined(Chart chart, Side side, double from, double to) {
    double low = from;
    double high = to;
    double farthest = Double.NEGATIVE_INFINITY;
    double one = high - GOLDEN * (high - low);
    double other = low + GOLDEN * (high - low);
    double atOne = side.signed(extremeAt(one, chart, side));
    double atOther = side.signed(extremeAt(other, chart, side));
    while (high - low > LAST_WIDTH) {
      farthest = Math.max(farthest, Math.max(atOne, atOther));
      if (atOne > atOther) {
        high = other;
        other = one;
        atOther = atOne;
        one = high - GOLDEN * (high - low);
        atOne = side.signed(extremeAt(one, chart, side));
      } else {
        low = one;
        one = other;
        atOne = atOther;
        other = low + GOLDEN * (high - low);
        atOther = side.signed(extremeAt(other, chart, side));
      }
    }
    return farthest;
  }

  /**
   * Infinite at a shape where the quantity is; as little extreme as can be where none is likely.
   */
  private double extremeAt(double logShape, Chart chart, Side side) {
    double shape = Math.exp(logShape);
    if (!chart.isFiniteAt(shape)) {
      return Double.POSITIVE_INFINITY;
    }
    OffsetSection section = new OffsetSection(logLikelihood, shape);
    double highest = section.highest(peak.offset() * shape / peak.shape());
    Expansion top = section.at(highest);
    double above = top.value() - height;
    if (!(above > -ROUNDING) || !(top.byOffsetTwice() < 0)) {
      return side.signed(Double.NEGATIVE_INFINITY);
    }
    if (above <= 0) {
      return chart.coordinate(shape, highest);
    }
    double away = Math.sqrt(-2 * above / top.byOffsetTwice());
    double less = chart.coordinate(shape, section.fallen(highest, -away, height));
    double more = chart.coordinate(shape, section.fallen(highest, away, height));
    return side.signed(Math.max(side.signed(less), side.signed(more)));
  }
}
