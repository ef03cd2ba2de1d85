package leadline.stats;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The logarithm of the likelihood of lives whose Weibull hazards are proportional, in terms of
 * shape, offset and an effect of each covariate, z = shape log age + offset + effects covariates:
 * linear in all, which keeps it concave where there is no delayed entry. Log ages are counted from
 * their centre, covariates from their mean in standard deviations, so that no unit matters. Source:
 * Lawless 2003, Statistical Models and Methods for Lifetime Data, section 6.3; Burridge 1981, J. R.
 * Stat. Soc. B 43:41.
 */
final class RegressionLikelihood {

  static final int SHAPE = 0;
  static final int OFFSET = 1;
  private static final int FIRST_EFFECT = 2;

  /** At one point: the value, its slopes and second derivatives. */
  record Slopes(double value, RealVector gradient, RealMatrix curvature) {

    boolean isFinite() {
      return Double.isFinite(value)
          && Double.isFinite(gradient.getL1Norm())
          && Double.isFinite(curvature.getNorm1());
    }
  }

  private final double centre;
  private final double[] means;
  private final double[] deviations;
  private final LogLikelihood[] likelihoods;
  private final double[][] rows;

  /**
   * @param data of which every covariate varies
   */
  RegressionLikelihood(RegressionData data) {
    int covariates = data.covariates().size();
    List<RegressionData.Alike> groups = data.groups();
    centre = data.pooled().logAges().centre();
    means = new double[covariates];
    deviations = new double[covariates];
    for (int covariate = 0; covariate < covariates; covariate++) {
      double[] column = data.column(covariate);
      double mean = Arrays.stream(column).average().orElse(0);
      means[covariate] = mean;
      deviations[covariate] =
          Math.sqrt(Arrays.stream(column).map(x -> (x - mean) * (x - mean)).average().orElse(0));
    }
    likelihoods =
        groups.stream()
            .map(
                group ->
                    new LogLikelihood(LifeFamily.WEIBULL.standardForm(), group.lives().logAges()))
            .toArray(LogLikelihood[]::new);
    rows =
        groups.stream()
            .map(group -> row(group, group.lives().logAges().centre()).toArray())
            .toArray(double[][]::new);
  }

  int parameters() {
    return FIRST_EFFECT + means.length;
  }

  int indexOf(int covariate) {
    return FIRST_EFFECT + covariate;
  }

  double centre() {
    return centre;
  }

  double mean(int covariate) {
    return means[covariate];
  }

  double deviation(int covariate) {
    return deviations[covariate];
  }

  /** What each parameter is multiplied by in z, for a life of a group at an age. */
  RealVector row(RegressionData.Alike group, double logAge) {
    RealVector row = new ArrayRealVector(parameters());
    row.setEntry(SHAPE, logAge - centre);
    row.setEntry(OFFSET, 1);
    for (int covariate = 0; covariate < means.length; covariate++) {
      row.setEntry(
          indexOf(covariate),
          (group.covariates().get(covariate) - means[covariate]) / deviations[covariate]);
    }
    return row;
  }

  Slopes at(RealVector parameters) {
    int size = parameters.getDimension();
    double[] point = parameters.toArray();
    double value = 0;
    double[] gradient = new double[size];
    double[][] curvature = new double[size][size];
    for (int group = 0; group < rows.length; group++) {
      double[] row = rows[group];
      double offset = 0;
      for (int index = 0; index < size; index++) {
        offset += point[index] * row[index];
      }
      Expansion here = likelihoods[group].at(point[SHAPE], offset);
      value += here.value();
      gradient[SHAPE] += here.byShape();
      curvature[SHAPE][SHAPE] += here.byShapeTwice() + here.byBoth() * row[SHAPE];
      for (int index = 0; index < size; index++) {
        gradient[index] += here.byOffset() * row[index];
        curvature[index][SHAPE] += here.byBoth() * row[index];
        for (int other = 0; other <= index; other++) {
          curvature[index][other] += here.byOffsetTwice() * row[index] * row[other];
        }
      }
    }
    for (int index = 0; index < size; index++) {
      for (int other = 0; other < index; other++) {
        curvature[other][index] = curvature[index][other];
      }
    }
    return new Slopes(
        value, new ArrayRealVector(gradient, false), new Array2DRowRealMatrix(curvature, false));
  }
}
