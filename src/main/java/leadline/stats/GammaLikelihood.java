package leadline.stats;

import leadline.stats.LogAges.Ages;

/**
 * The logarithm of the likelihood of gamma distributed lives, over the plane of {@link GammaPlane}.
 * Densities are per unit of age. Source: Lawless 2003, Statistical Models and Methods for Lifetime
 * Data, section 5.1; delayed entry and intervals: Meeker and Escobar 1998, Statistical Methods for
 * Reliability Data, chapters 7 and 11.
 */
final class GammaLikelihood implements LikelihoodSurface {

  /** In log age over its standard deviation, and in log density: below, four nodes are exact. */
  private static final double NARROW = 0.1;

  private final LogAges ages;
  private final PlaneJet jet = new PlaneJet();
  private final PlaneJet lower = new PlaneJet();
  private final PlaneJet upper = new PlaneJet();

  GammaLikelihood(LogAges ages) {
    this.ages = ages;
  }

  double centre() {
    return ages.centre();
  }

  @Override
  public Expansion at(double shape, double offset) {
    PlaneJet sum = aboutMean(shape, offset / GammaPlane.stretch(shape));
    GammaPlane.stretch(shape, offset, sum);
    return sum.expansion();
  }

  /** By the shape and by what the logarithm of the mean falls short of the centre. */
  PlaneJet aboutMean(double shape, double offset) {
    GammaAtShape form = new GammaAtShape(shape);
    PlaneJet sum = new PlaneJet();
    Ages exact = ages.exact();
    for (int index = 0; index < exact.logAge.length; index++) {
      form.logDensity(exact.logAge[index] + offset, jet);
      jet.value -= exact.logAge[index] + ages.centre();
      sum.add(exact.weight[index], jet);
    }
    Ages survival = ages.survival();
    for (int index = 0; index < survival.logAge.length; index++) {
      form.logSurvival(survival.logAge[index] + offset, jet);
      sum.add(survival.weight[index], jet);
    }
    Ages left = ages.left();
    for (int index = 0; index < left.logAge.length; index++) {
      form.logFailure(left.logAge[index] + offset, jet);
      sum.add(left.weight[index], jet);
    }
    Ages from = ages.intervalLower();
    Ages to = ages.intervalUpper();
    for (int index = 0; index < from.logAge.length; index++) {
      fillInterval(form, shape, from.logAge[index] + offset, to.logAge[index] + offset);
      sum.add(from.weight[index], lower);
    }
    return sum;
  }

  private void fillInterval(GammaAtShape form, double shape, double from, double to) {
    double width = to - from;
    form.logDensity((from + to) / 2, jet);
    double deviations = Math.sqrt(shape) * width;
    if (deviations < NARROW && Math.abs(jet.byOffset) * width < NARROW) {
      fillNarrow(form, from, to);
    } else if (from < 0) {
      form.logFailure(to, lower);
      form.logFailure(from, upper);
      lower.excessOver(upper);
    } else {
      form.logSurvival(from, lower);
      form.logSurvival(to, upper);
      lower.excessOver(upper);
    }
  }

  /** The integral of the density, in the limit that of an exact age. */
  private void fillNarrow(GammaAtShape form, double from, double to) {
    double reference = jet.value;
    lower.set(0, 0, 0, 0, 0, 0);
    double mass = 0;
    for (int node = 0; node < LogLikelihood.NODES.length; node++) {
      form.logDensity((from + to + (to - from) * LogLikelihood.NODES[node]) / 2, jet);
      double part = LogLikelihood.NODE_WEIGHTS[node] * Math.exp(jet.value - reference);
      jet.byShapeTwice += jet.byShape * jet.byShape;
      jet.byBoth += jet.byShape * jet.byOffset;
      jet.byOffsetTwice += jet.byOffset * jet.byOffset;
      lower.add(part, jet);
      mass += part;
    }
    double shape = lower.byShape / mass;
    double offset = lower.byOffset / mass;
    lower.set(
        reference + Math.log(mass * (to - from)),
        shape,
        offset,
        lower.byShapeTwice / mass - shape * shape,
        lower.byBoth / mass - shape * offset,
        lower.byOffsetTwice / mass - offset * offset);
  }
}
