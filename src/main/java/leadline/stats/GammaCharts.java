package leadline.stats;

import java.util.function.DoubleUnaryOperator;

/**
 * Of the gamma distribution, in the plane of {@link GammaPlane}. Limits of the survival at an age
 * are taken on the scale of the logarithm of its cumulative hazard.
 *
 * @param centre the logarithm of age from which the offset counts
 */
record GammaCharts(double centre) implements Charts {

  /** Below this logarithm of a chance, it and the cumulative hazard are alike to the last digit. */
  private static final double SMALL_CHANCE = -37;

  @Override
  public Chart scale() {
    return age(
        (shape, offset, jet) ->
            jet.set(-offset - Math.log(shape), -1 / shape, -1, 1 / (shape * shape), 0, 0));
  }

  @Override
  public Chart mean() {
    return age((shape, offset, jet) -> jet.set(-offset, 0, -1, 0, 0, 0));
  }

  @Override
  public Chart quantile(double share) {
    return age(
        (shape, offset, jet) -> {
          GammaAtShape form = new GammaAtShape(shape);
          double u = form.quantile(share);
          form.logFailure(u, jet);
          double slope = -jet.byShape / jet.byOffset;
          double curve = jet.byShapeTwice + slope * (2 * jet.byBoth + slope * jet.byOffsetTwice);
          jet.set(u - offset, slope, -1, -curve / jet.byOffset, 0, 0);
        });
  }

  @Override
  public Chart survivalAt(double age) {
    double logAge = Math.log(age) - centre;
    return onPlane(
        (shape, offset, jet) -> {
          GammaAtShape form = new GammaAtShape(shape);
          form.logFailure(logAge + offset, jet);
          if (jet.value > SMALL_CHANCE) {
            form.logSurvival(logAge + offset, jet);
            jet.logOfSize();
          }
        },
        coordinate -> Math.exp(-Math.exp(coordinate)));
  }

  @Override
  public Chart failureWithin(double hours, double age) {
    double logAge = Math.log(age) - centre;
    double logLater = logAge + Math.log1p(hours / age);
    return onPlane(
        (shape, offset, jet) -> {
          GammaAtShape form = new GammaAtShape(shape);
          PlaneJet first = new PlaneJet();
          form.logFailure(logLater + offset, jet);
          if (jet.value > SMALL_CHANCE) {
            form.logSurvival(logLater + offset, jet);
            form.logSurvival(logAge + offset, first);
            jet.add(-1, first);
            jet.logOfSize();
          } else {
            form.logFailure(logAge + offset, first);
            jet.excessOver(first);
          }
        },
        coordinate -> -Math.expm1(-Math.exp(coordinate)));
  }

  private Chart age(LevelChart.Level logAge) {
    return onPlane(logAge, coordinate -> Math.exp(coordinate + centre));
  }

  /**
   * @param level by shape and by what the logarithm of the mean falls short of the centre
   */
  private static Chart onPlane(LevelChart.Level level, DoubleUnaryOperator toQuantity) {
    return new LevelChart(
        (shape, offset, jet) -> {
          level.at(shape, offset / GammaPlane.stretch(shape), jet);
          GammaPlane.stretch(shape, offset, jet);
        },
        toQuantity);
  }
}
