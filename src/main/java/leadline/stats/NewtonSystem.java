package leadline.stats;

import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Newton's equations for a maximum, each parameter scaled to a curvature of 1 by itself, so that
 * the least curvature keeps its digits beside the greatest.
 *
 * @param scale the diagonal matrix that does so
 * @param damping added to the scaled diagonal where that alone makes the curvature fall off on
 *     every side; else 0
 */
record NewtonSystem(RealMatrix scale, DecompositionSolver solver, double damping) {

  private static final double LEAST_DAMPING = 1e-10;
  private static final double SYMMETRIC = 1e-6;
  private static final double POSITIVE = 1e-15;

  /** So that no parameter divides by 0, of the greatest curvature. */
  private static final double LEAST_CURVATURE = 1e-30;

  /**
   * @param curvature second derivatives, finite and symmetric
   */
  static NewtonSystem of(RealMatrix curvature) {
    int size = curvature.getRowDimension();
    double least = Double.MIN_NORMAL + LEAST_CURVATURE * curvature.getNorm1();
    RealMatrix scale = MatrixUtils.createRealMatrix(size, size);
    for (int index = 0; index < size; index++) {
      double own = Math.max(least, Math.abs(curvature.getEntry(index, index)));
      scale.setEntry(index, index, 1 / Math.sqrt(own));
    }
    RealMatrix scaled = scale.multiply(curvature).multiply(scale).scalarMultiply(-1);
    RealMatrix unit = MatrixUtils.createRealIdentityMatrix(size);
    double damping = 0;
    while (true) {
      try {
        RealMatrix damped = scaled.add(unit.scalarMultiply(damping));
        return new NewtonSystem(
            scale, new CholeskyDecomposition(damped, SYMMETRIC, POSITIVE).getSolver(), damping);
      } catch (MathIllegalArgumentException notPositive) {
        damping = damping == 0 ? LEAST_DAMPING : 10 * damping;
      }
    }
  }

  RealVector step(RealVector gradient) {
    return scale.operate(solver.solve(scale.operate(gradient)));
  }

  /** Of minus the curvature: the covariance of estimates, by the observed information. */
  RealMatrix inverse() {
    return scale.multiply(solver.getInverse()).multiply(scale);
  }
}
