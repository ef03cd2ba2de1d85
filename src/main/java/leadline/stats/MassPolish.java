package leadline.stats;

import java.util.Arrays;

/**
 * Newton's method for the positive masses of a likelihood, each of which a maximum gives the same
 * slope, the total weight: with that slope as the price of mass, no other constraint remains. A
 * step ends where a mass would fall below 0, which then leaves; one whose slope is above the price
 * enters. Source: Nocedal and Wright 2006, Numerical Optimization, chapters 5 and 16.
 */
final class MassPolish {

  private static final int STEPS = 200;
  private static final int HALVINGS = 30;

  /** A mass so small, as a multiple of an equal share, and with a slope so low leaves at once. */
  private static final double SMALL = 1e-3;

  private static final double LOW = 1 - 1e-7;

  /** Of the total weight, how far slopes may lie from it. */
  private static final double ACCURACY = 1e-14;

  private static final double INNER_ACCURACY = 1e-5;

  /** Of the log-likelihood, what rounding may hide. */
  private static final double ROUNDING = 1e-13;

  private final MassLikelihood likelihood;
  private final double price;
  private double[] masses;

  MassPolish(MassLikelihood likelihood, double[] start) {
    this.likelihood = likelihood;
    this.price = likelihood.total();
    this.masses = start.clone();
  }

  /** The masses, of sum 1, that Newton's method comes to. */
  double[] masses() {
    dropSmallMasses();
    for (int step = 0; step < STEPS; step++) {
      double[] probabilities = likelihood.sums(masses);
      double[] excess = likelihood.slopes(probabilities);
      Arrays.setAll(excess, mass -> excess[mass] - price);
      if (!move(probabilities, excess) && !enter(probabilities, excess)) {
        break;
      }
    }
    double sum = Arrays.stream(masses).sum();
    return Arrays.stream(masses).map(mass -> mass / sum).toArray();
  }

  private void dropSmallMasses() {
    double[] slopes = likelihood.slopes(likelihood.sums(masses));
    double[] fewer = masses.clone();
    for (int mass = 0; mass < fewer.length; mass++) {
      if (fewer[mass] * fewer.length < SMALL && slopes[mass] < price * LOW) {
        fewer[mass] = 0;
      }
    }
    if (Double.isFinite(valueOf(fewer))) {
      masses = fewer;
    }
  }

  private boolean move(double[] probabilities, double[] excess) {
    double[] target = new double[masses.length];
    Arrays.setAll(target, mass -> masses[mass] > 0 ? excess[mass] : 0);
    if (Arrays.stream(target).map(Math::abs).max().orElse(0) <= ACCURACY * price) {
      return false;
    }
    double[] direction =
        new NewtonStep(likelihood, probabilities, masses, INNER_ACCURACY).towards(target);
    double share = shareWithin(direction);
    double least = valueOf(masses) * (1 + Math.copySign(ROUNDING, -valueOf(masses)));
    for (int halving = 0; halving < HALVINGS; halving++) {
      double[] moved = moved(direction, share);
      if (valueOf(moved) >= least && !Arrays.equals(moved, masses)) {
        masses = moved;
        return true;
      }
      share /= 2;
    }
    return false;
  }

  private double shareWithin(double[] direction) {
    double share = 1;
    for (int mass = 0; mass < masses.length; mass++) {
      if (direction[mass] < 0) {
        share = Math.min(share, masses[mass] / -direction[mass]);
      }
    }
    return share;
  }

  private double[] moved(double[] direction, double share) {
    double[] moved = new double[masses.length];
    for (int mass = 0; mass < masses.length; mass++) {
      double value = masses[mass] + share * direction[mass];
      moved[mass] = value > ACCURACY * masses[mass] ? value : 0;
    }
    return moved;
  }

  /** Half of Newton's step along the one absent mass whose slope is steepest. */
  private boolean enter(double[] probabilities, double[] excess) {
    int steepest = 0;
    for (int mass = 1; mass < masses.length; mass++) {
      if (excess[mass] > excess[steepest]) {
        steepest = mass;
      }
    }
    if (masses[steepest] > 0 || excess[steepest] <= ACCURACY * price) {
      return false;
    }
    masses = masses.clone();
    masses[steepest] = excess[steepest] / likelihood.curvatures(probabilities)[steepest] / 2;
    return true;
  }

  /** The log-likelihood less the price of the mass. */
  private double valueOf(double[] values) {
    return likelihood.logLikelihood(likelihood.sums(values)) - price * Arrays.stream(values).sum();
  }
}
