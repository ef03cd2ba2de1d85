package leadline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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

  /** What must not fall along a direction, a row each; the first is the shape. */
  private final RealMatrix bounds;

  private final int parameters;

  Recession(RegressionLikelihood likelihood, RegressionData data) {
    parameters = likelihood.parameters();
    List<RealVector> rows = new ArrayList<>();
    RealVector shape = new ArrayRealVector(parameters);
    shape.setEntry(RegressionLikelihood.SHAPE, 1);
    rows.add(shape);
    for (RegressionData.Alike group : data.groups()) {
      double latestAlive = 0;
      double earliestEnd = Double.POSITIVE_INFINITY;
      for (Alike alike : group.lives().lives()) {
        latestAlive = Math.max(latestAlive, alike.life().lower());
        earliestEnd = Math.min(earliestEnd, alike.life().upper());
      }
      if (latestAlive > 0) {
        rows.add(likelihood.row(group, Math.log(latestAlive)).mapMultiply(-1));
      }
      if (earliestEnd < Double.POSITIVE_INFINITY) {
        rows.add(likelihood.row(group, Math.log(earliestEnd)));
      }
    }
    bounds =
        MatrixUtils.createRealMatrix(
            rows.stream().map(row -> row.unitVector().toArray()).toArray(double[][]::new));
  }

  /** One in which all changes that any such direction makes; empty if there is none. */
  Optional<RealVector> direction() {
    RealVector sum = new ArrayRealVector(parameters);
    RealVector still = bounds.preMultiply(new ArrayRealVector(bounds.getRowDimension(), 1.0));
    for (int round = 0; round < parameters; round++) {
      RealVector nearest = new NonNegativeLeastSquares(bounds).nearestTo(still);
      Optional<RealVector> direction =
          nearest.getNorm() > NEARLY_NONE * NEARLY_NONE * still.getNorm()
              ? verified(nearest)
              : Optional.empty();
      if (direction.isEmpty()) {
        break;
      }
      sum = sum.add(direction.get());
      RealVector change = bounds.operate(sum);
      still =
          bounds.preMultiply(change.map(one -> one > NEARLY_NONE * change.getMaxValue() ? 0 : 1));
      if (still.getNorm() == 0) {
        break;
      }
    }
    return sum.getNorm() > 0 ? Optional.of(sum.unitVector()) : Optional.empty();
  }

  /** Whether a direction changes the shape, and nothing at any age at which a life was seen. */
  boolean isOfShapeAlone(RealVector direction) {
    RealVector change = bounds.operate(direction);
    double shape = change.getEntry(0);
    change.setEntry(0, 0);
    return change.getMaxValue() <= NEARLY_NONE * shape;
  }

  /** A direction, freed of changes that are rounding, if the likelihood never falls in it. */
  private Optional<RealVector> verified(RealVector direction) {
    RealVector change = bounds.operate(direction);
    double greatest = change.getLInfNorm();
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
        ? Optional.of(cleaned.unitVector())
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
