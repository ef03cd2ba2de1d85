package leadline.stats;

/**
 * Newton's step for the positive masses of a likelihood, by conjugate gradients preconditioned by
 * the diagonal: the curvature matrix is never formed. Source: Nocedal and Wright 2006, Numerical
 * Optimization, algorithm 5.3.
 */
final class NewtonStep {

  /** Beyond one iteration for each mass, which rounding may make too few. */
  private static final int SPARE_ITERATIONS = 20;

  private final MassLikelihood likelihood;
  private final double[] probabilities;
  private final double[] masses;
  private final double accuracy;

  NewtonStep(MassLikelihood likelihood, double[] probabilities, double[] masses, double accuracy) {
    this.likelihood = likelihood;
    this.probabilities = probabilities;
    this.masses = masses;
    this.accuracy = accuracy;
  }

  /**
   * The step along which the slopes of positive masses fall by the target, to a relative accuracy.
   */
  double[] towards(double[] target) {
    double[] diagonal = likelihood.curvatures(probabilities);
    double[] step = new double[masses.length];
    double[] residual = target.clone();
    double[] search = new double[masses.length];
    double enough = accuracy * accuracy * scaledSquare(residual, diagonal);
    double before = Double.POSITIVE_INFINITY;
    for (int iteration = 0; iteration < masses.length + SPARE_ITERATIONS; iteration++) {
      double square = scaledSquare(residual, diagonal);
      if (square <= enough) {
        break;
      }
      for (int mass = 0; mass < masses.length; mass++) {
        search[mass] = residual[mass] / diagonal[mass] + square / before * search[mass];
      }
      double[] curved = likelihood.curvatureTimes(probabilities, search);
      double bend = 0;
      for (int mass = 0; mass < masses.length; mass++) {
        bend += search[mass] * curved[mass];
      }
      if (!(bend > 0)) {
        break;
      }
      for (int mass = 0; mass < masses.length; mass++) {
        step[mass] += square / bend * search[mass];
        residual[mass] -= masses[mass] > 0 ? square / bend * curved[mass] : 0;
      }
      before = square;
    }
    return step;
  }

  private static double scaledSquare(double[] residual, double[] diagonal) {
    double sum = 0;
    for (int mass = 0; mass < residual.length; mass++) {
      sum += residual[mass] * residual[mass] / diagonal[mass];
    }
    return sum;
  }
}
