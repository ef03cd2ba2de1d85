package leadline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The nearest point of a cone {d: no row of a matrix times d is below 0}: what is left of a vector
 * after the multiples, none below 0, of minus the rows that come nearest to it. Source: Lawson and
 * Hanson 1974, Solving Least Squares Problems, chapter 23; of the cone, Moreau 1962.
 */
final class NonNegativeLeastSquares {

  private static final int MOST_ROUNDS = 1000;

  /** Of the length of what is left. */
  private static final double ROUNDING = 1e-11;

  private final RealMatrix rows;

  /**
   * @param rows of length 1
   */
  NonNegativeLeastSquares(RealMatrix rows) {
    this.rows = rows;
  }

  RealVector nearestTo(RealVector vector) {
    double[] multiples = new double[rows.getRowDimension()];
    List<Integer> used = new ArrayList<>();
    RealVector left = vector;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      RealVector product = rows.operate(left);
      int worst = product.getMinIndex();
      if (left.getNorm() <= ROUNDING * vector.getNorm()
          || product.getEntry(worst) >= -ROUNDING * vector.getNorm()
          || used.contains(worst)) {
        return left;
      }
      used.add(worst);
      while (!isSolved(vector, multiples, used)) {
        used.removeIf(row -> multiples[row] <= 0);
      }
      left = vector.add(rows.preMultiply(MatrixUtils.createRealVector(multiples)));
    }
    return left;
  }

  /** Moves the multiples of the used rows to the best ones, or until one of them is 0. */
  private boolean isSolved(RealVector vector, double[] multiples, List<Integer> used) {
    if (used.isEmpty()) {
      Arrays.fill(multiples, 0);
      return true;
    }
    RealMatrix columns = MatrixUtils.createRealMatrix(rows.getColumnDimension(), used.size());
    for (int column = 0; column < used.size(); column++) {
      columns.setColumnVector(column, rows.getRowVector(used.get(column)));
    }
    RealVector best = new QRDecomposition(columns).getSolver().solve(vector.mapMultiply(-1));
    double share = 1;
    for (int index = 0; index < used.size(); index++) {
      double now = multiples[used.get(index)];
      if (best.getEntry(index) <= 0) {
        share = Math.min(share, now / (now - best.getEntry(index)));
      }
    }
    boolean isBest = best.getMinValue() > 0;
    for (int index = 0; index < used.size(); index++) {
      double now = multiples[used.get(index)];
      double moved = isBest ? best.getEntry(index) : now + share * (best.getEntry(index) - now);
      multiples[used.get(index)] = moved > ROUNDING * Math.abs(now) ? moved : 0;
    }
    return isBest;
  }
}
