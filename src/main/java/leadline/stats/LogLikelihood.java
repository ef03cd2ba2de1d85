package leadline.stats;

import leadline.stats.LogAges.Ages;

/**
 * The logarithm of the likelihood of lives in terms of shape and offset, z = shape log age +
 * offset: linear in both, which keeps it concave where there is no delayed entry. Densities are per
 * unit of age. Source: Meeker and Escobar 1998, Statistical Methods for Reliability Data, section
 * 7.2; delayed entry: section 11.5.
 */
final class LogLikelihood implements LikelihoodSurface {

  /** In z, and in the logarithm of the density across it: below, four nodes are exact. */
  private static final double NARROW = 0.1;

  /** Of the rule of Gauss and Legendre on -1 to 1. */
  static final double[] NODES = {
    -0.8611363115940526, -0.33998104358485626, 0.33998104358485626, 0.8611363115940526
  };

  /** Halved, for a mean over the interval. */
  static final double[] NODE_WEIGHTS = {
    0.17392742256872692, 0.32607257743127305, 0.32607257743127305, 0.17392742256872692
  };

  private final StandardForm form;
  private final LogAges ages;
  private final double exactWeight;
  private final double logAgesOfExact;

  private final Jet jet = new Jet();
  private final Jet upperJet = new Jet();
  private double value;
  private double byShape;
  private double byOffset;
  private double byShapeTwice;
  private double byBoth;
  private double byOffsetTwice;

  LogLikelihood(StandardForm form, LogAges ages) {
    this.form = form;
    this.ages = ages;
    double weights = 0;
    double logAges = 0;
    for (int index = 0; index < ages.exact().logAge.length; index++) {
      double weight = ages.exact().weight[index];
      weights += weight;
      logAges += weight * (ages.exact().logAge[index] + ages.centre());
    }
    this.exactWeight = weights;
    this.logAgesOfExact = logAges;
  }

  StandardForm form() {
    return form;
  }

  double centre() {
    return ages.centre();
  }

  /**
   * @param shape 1 / sigma, more than 0
   * @param offset z at the centre of the log ages
   */
  @Override
  public Expansion at(double shape, double offset) {
    value = exactWeight == 0 ? 0 : exactWeight * Math.log(shape) - logAgesOfExact;
    byShape = exactWeight / shape;
    byOffset = 0;
    byShapeTwice = -exactWeight / (shape * shape);
    byBoth = 0;
    byOffsetTwice = 0;
    addExact(shape, offset);
    addSurvival(shape, offset);
    addLeft(shape, offset);
    addIntervals(shape, offset);
    return new Expansion(value, byShape, byOffset, byShapeTwice, byBoth, byOffsetTwice);
  }

  private void addExact(double shape, double offset) {
    Ages exact = ages.exact();
    for (int index = 0; index < exact.logAge.length; index++) {
      double y = exact.logAge[index];
      form.logDensity(shape * y + offset, jet);
      add(exact.weight[index], y);
    }
  }

  private void addSurvival(double shape, double offset) {
    Ages survival = ages.survival();
    for (int index = 0; index < survival.logAge.length; index++) {
      double y = survival.logAge[index];
      form.logSurvival(shape * y + offset, jet);
      add(survival.weight[index], y);
    }
  }

  private void addLeft(double shape, double offset) {
    Ages left = ages.left();
    for (int index = 0; index < left.logAge.length; index++) {
      double y = left.logAge[index];
      form.logSurvival(shape * y + offset, jet);
      jet.complement();
      add(left.weight[index], y);
    }
  }

  private void add(double weight, double y) {
    value += weight * jet.value;
    double first = weight * jet.first;
    byShape += first * y;
    byOffset += first;
    double second = weight * jet.second;
    byShapeTwice += second * y * y;
    byBoth += second * y;
    byOffsetTwice += second;
  }

  private void addIntervals(double shape, double offset) {
    double[] lower = ages.intervalLower().logAge;
    double[] upper = ages.intervalUpper().logAge;
    double[] weight = ages.intervalLower().weight;
    for (int index = 0; index < weight.length; index++) {
      double y1 = lower[index];
      double y2 = upper[index];
      if (isNarrow(shape, offset, y1, y2)) {
        addNarrow(weight[index], shape, offset, y1, y2);
      } else {
        addWide(weight[index], shape, offset, y1, y2);
      }
    }
  }

  private boolean isNarrow(double shape, double offset, double y1, double y2) {
    double width = shape * (y2 - y1);
    if (width > NARROW) {
      return false;
    }
    form.logDensity(shape * (y1 + y2) / 2 + offset, jet);
    return Math.abs(jet.first) * width < NARROW;
  }

  /** The difference of two survivals, which a narrow interval would leave without digits. */
  private void addWide(double weight, double shape, double offset, double y1, double y2) {
    form.logSurvival(shape * y1 + offset, jet);
    form.logSurvival(shape * y2 + offset, upperJet);
    double log = jet.value + Jet.logComplement(upperJet.value - jet.value);
    double share1 = Math.exp(jet.value - log);
    double share2 = Math.exp(upperJet.value - log);
    double slope1 = share1 * jet.first;
    double slope2 = share2 == 0 ? 0 : share2 * upperJet.first;
    double curve1 = share1 * (jet.second + jet.first * jet.first);
    double curve2 = share2 == 0 ? 0 : share2 * (upperJet.second + upperJet.first * upperJet.first);
    double shapeSlope = slope1 * y1 - slope2 * y2;
    double offsetSlope = slope1 - slope2;
    value += weight * log;
    byShape += weight * shapeSlope;
    byOffset += weight * offsetSlope;
    byShapeTwice += weight * (curve1 * y1 * y1 - curve2 * y2 * y2 - shapeSlope * shapeSlope);
    byBoth += weight * (curve1 * y1 - curve2 * y2 - shapeSlope * offsetSlope);
    byOffsetTwice += weight * (curve1 - curve2 - offsetSlope * offsetSlope);
  }

  /** The integral of the density, in the limit that of an exact age. */
  private void addNarrow(double weight, double shape, double offset, double y1, double y2) {
    double middle = (y1 + y2) / 2;
    double half = (y2 - y1) / 2;
    form.logDensity(shape * middle + offset, jet);
    double reference = jet.value;
    double mass = 0;
    double shapeSlope = 0;
    double offsetSlope = 0;
    double shapeCurve = 0;
    double bothCurve = 0;
    double offsetCurve = 0;
    for (int node = 0; node < NODES.length; node++) {
      double y = middle + half * NODES[node];
      form.logDensity(shape * y + offset, jet);
      double part = NODE_WEIGHTS[node] * Math.exp(jet.value - reference);
      double curve = part * (jet.second + jet.first * jet.first);
      mass += part;
      shapeSlope += part * jet.first * y;
      offsetSlope += part * jet.first;
      shapeCurve += curve * y * y;
      bothCurve += curve * y;
      offsetCurve += curve;
    }
    shapeSlope /= mass;
    offsetSlope /= mass;
    value += weight * (reference + Math.log(mass) + Math.log(shape * (y2 - y1)));
    byShape += weight * (shapeSlope + 1 / shape);
    byOffset += weight * offsetSlope;
    byShapeTwice += weight * (shapeCurve / mass - shapeSlope * shapeSlope - 1 / (shape * shape));
    byBoth += weight * (bothCurve / mass - shapeSlope * offsetSlope);
    byOffsetTwice += weight * (offsetCurve / mass - offsetSlope * offsetSlope);
  }
}
