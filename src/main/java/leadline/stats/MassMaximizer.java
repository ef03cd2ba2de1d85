package leadline.stats;

import java.util.Arrays;

/**
 * Finds the masses of greatest likelihood. Steps of expectation-maximization and of the iterative
 * convex minorant approach them from anywhere (Wellner and Zhan 1997, J. Am. Stat. Assoc. 92:945;
 * Jongbloed 1998, J. Comput. Graph. Stat. 7:310); Newton's method on the positive masses then gives
 * the last digits.
 */
final class MassMaximizer {

  private static final int ROUNDS = 200;
  private static final int STEPS_IN_A_ROUND = 5;
  private static final int HALVINGS = 40;

  /** Of the total weight: no further digit of the slopes is sure. */
  private static final double ACCURACY = 1e-12;

  private static final double SUFFICIENT = 1e-4;

  private final MassLikelihood likelihood;
  private double[] masses;

  MassMaximizer(MassLikelihood likelihood) {
    this.likelihood = likelihood;
    this.masses = new double[likelihood.masses()];
    Arrays.fill(masses, 1.0 / masses.length);
  }

  double[] maximum() {
    double enough = ACCURACY * likelihood.total();
    for (int round = 0; round < ROUNDS && likelihood.shortfall(masses) > enough; round++) {
      for (int step = 0; step < STEPS_IN_A_ROUND; step++) {
        expectationStep();
        minorantStep();
      }
      double[] polished = new MassPolish(likelihood, masses).masses();
      if (likelihood.shortfall(polished) < likelihood.shortfall(masses)) {
        masses = polished;
      }
    }
    return masses;
  }

  private void expectationStep() {
    double[] slopes = likelihood.slopes(likelihood.sums(masses));
    for (int mass = 0; mass < masses.length; mass++) {
      masses[mass] *= slopes[mass] / likelihood.total();
    }
  }

  /** Newton's step for the running sums, their curvature taken as diagonal, made rising. */
  private void minorantStep() {
    double[] probabilities = likelihood.sums(masses);
    double[] slopes = likelihood.slopes(probabilities);
    double[] curvatures = likelihood.curvaturesAlongSums(probabilities);
    double[] targets = new double[curvatures.length];
    double sum = 0;
    for (int mass = 0; mass < targets.length; mass++) {
      sum += masses[mass];
      targets[mass] = sum + (slopes[mass] - slopes[mass + 1]) / curvatures[mass];
    }
    double[] fitted = IsotonicRegression.fit(targets, curvatures);
    double[] proposed = new double[masses.length];
    double before = 0;
    for (int mass = 0; mass < masses.length; mass++) {
      double upTo = mass < fitted.length ? Math.min(1, Math.max(0, fitted[mass])) : 1;
      proposed[mass] = upTo - before;
      before = upTo;
    }
    moveTowards(proposed, slopes, logLikelihood(masses));
  }

  private void moveTowards(double[] proposed, double[] slopes, double from) {
    double rise = 0;
    for (int mass = 0; mass < masses.length; mass++) {
      rise += slopes[mass] * (proposed[mass] - masses[mass]);
    }
    double share = 1;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double[] moved = new double[masses.length];
      for (int mass = 0; mass < masses.length; mass++) {
        moved[mass] = masses[mass] + share * (proposed[mass] - masses[mass]);
      }
      if (logLikelihood(moved) >= from + SUFFICIENT * share * rise) {
        masses = moved;
        return;
      }
      share /= 2;
    }
  }

  private double logLikelihood(double[] values) {
    return likelihood.logLikelihood(likelihood.sums(values));
  }
}
