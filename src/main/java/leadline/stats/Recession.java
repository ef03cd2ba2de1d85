package leadline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import leadline.stats.LifeData.Alike;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Directions among the parameters of a regression in which the likelihood never falls: those in
 * which z never rises at the last age at which a life of any group was alive, never falls at the
 * first at which one had ended, and the shape never falls. If there is one, no highest point
 * exists; without delayed entry only then, but for a shape of 0. Source: Rockafellar 1970, Convex
 * Analysis, theorem 27.1; of groups that part so, Albert and Anderson 1984, Biometrika 71:1.
 */
final class Recession {

  /** Of the greatest change of z: those smaller are taken to be none, and made none. */
  private static final double NEARLY_NONE = 1e-4;

  /** Of the greatest change of z, after that. */
  private static final double NONE = 1e-9;

  /** Of the greatest eigenvalue: a direction of no change. */
  private static final double NO_EIGENVALUE = 1e-13;

  /** What must not fall along a direction, a row each. */
  private final RealMatrix bounds;

  private final RealMatrix allAges;
  private final int parameters;

  Recession(RegressionLikelihood likelihood, RegressionData data) {
    List<double[]> rows = new ArrayList<>();
    List<double[]> ages = new ArrayList<>();
    parameters = likelihood.parameters();
    RealVector shape = new ArrayRealVector(parameters);
    shape.setEntry(RegressionLikelihood.SHAPE, 1);
    rows.add(shape.toArray());
    for (RegressionData.Alike group : data.groups()) {
      double latestAlive = 0;
      double earliestEnd = Double.POSITIVE_INFINITY;
      TreeSet<Double> known = new TreeSet<>();
      for (Alike alike : group.lives().lives()) {
        Life life = alike.life();
        latestAlive = Math.max(latestAlive, life.lower());
        earliestEnd = Math.min(earliestEnd, life.upper());
        known.addAll(List.of(life.entry(), life.lower(), life.upper()));
      }
      if (latestAlive > 0) {
        rows.add(likelihood.row(group, Math.log(latestAlive)).mapMultiply(-1).toArray());
      }
      if (earliestEnd < Double.POSITIVE_INFINITY) {
        rows.add(likelihood.row(group, Math.log(earliestEnd)).toArray());
      }
      known.removeIf(age -> age == 0 || age == Double.POSITIVE_INFINITY);
      known.forEach(age -> ages.add(likelihood.row(group, Math.log(age)).toArray()));
    }
    bounds = MatrixUtils.createRealMatrix(rows.toArray(double[][]::new));
    allAges = MatrixUtils.createRealMatrix(ages.toArray(double[][]::new));
  }

  /** One in which the likelihood changes by shape alone, at no age of any life. */
  Optional<RealVector> ofShapeAlone() {
    List<RealVector> still = withoutChange(allAges);
    return still.isEmpty() ? Optional.empty() : rising(still.get(0));
  }

  private Optional<RealVector> rising(RealVector direction) {
    double shape = direction.getEntry(RegressionLikelihood.SHAPE);
    return verified(direction.mapMultiply(shape < 0 ? -1 : 1));
  }

  /** A direction, freed of changes that are rounding, if the likelihood never falls in it. */
  Optional<RealVector> verified(RealVector direction) {
    RealVector change = bounds.operate(direction);
    double greatest = change.getLInfNorm();
    if (!(greatest > 0)) {
      return Optional.empty();
    }
    int[] none = indicesBelow(change, NEARLY_NONE * greatest);
    RealVector cleaned = direction;
    if (none.length > 0) {
      int[] all = new int[parameters];
      Arrays.setAll(all, index -> index);
      cleaned = new ArrayRealVector(parameters);
      for (RealVector still : withoutChange(bounds.getSubMatrix(none, all))) {
        cleaned = cleaned.add(still.mapMultiply(still.dotProduct(direction)));
      }
    }
    RealVector there = bounds.operate(cleaned);
    double most = there.getMaxValue();
    return most > NEARLY_NONE * greatest && there.getMinValue() >= -NONE * most
        ? Optional.of(cleaned.mapDivide(cleaned.getLInfNorm()))
        : Optional.empty();
  }

  private static int[] indicesBelow(RealVector change, double bound) {
    List<Integer> below = new ArrayList<>();
    for (int index = 0; index < change.getDimension(); index++) {
      if (Math.abs(change.getEntry(index)) < bound) {
        below.add(index);
      }
    }
    return below.stream().mapToInt(Integer::intValue).toArray();
  }

  private static List<RealVector> withoutChange(RealMatrix rows) {
    var eigen = new EigenDecompositionSymmetric(rows.transposeMultiply(rows));
    double greatest = Arrays.stream(eigen.getEigenvalues()).max().orElse(0);
    List<RealVector> still = new ArrayList<>();
    for (int index = 0; index < eigen.getEigenvalues().length; index++) {
      if (eigen.getEigenvalue(index) <= NO_EIGENVALUE * greatest) {
        still.add(eigen.getEigenvector(index));
      }
    }
    return still;
  }
}
