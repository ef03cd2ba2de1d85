package leadline.stats;

import java.util.function.DoubleUnaryOperator;

/**
 * Failures expected of a position whose part is renewed upon each failure, M(t), on equal steps of
 * time from a new part at 0: M(t) = F(t) + the integral of M(t - x) dF(x), solved step by step with
 * F in the middle of each. The error is of the order of the squared step. Source: Xie 1989, Commun.
 * Statist. Simul. Comput. 18:281 (the Riemann-Stieltjes method).
 */
final class RenewalFunction {

  private final double step;
  private final double[] values;

  /**
   * @param failureBy the distribution function of the life, continuous
   * @param horizon the last time, finite and more than 0
   * @param steps how many there are to it, 1 or more
   */
  RenewalFunction(DoubleUnaryOperator failureBy, double horizon, int steps) {
    step = horizon / steps;
    values = new double[steps + 1];
    double[] half = new double[steps + 1];
    double[] whole = new double[steps + 1];
    for (int index = 1; index <= steps; index++) {
      half[index] = failureBy.applyAsDouble((index - 0.5) * step);
      whole[index] = failureBy.applyAsDouble(index * step);
    }
    for (int at = 1; at <= steps; at++) {
      double sum = whole[at] - half[1] * values[at - 1];
      for (int index = 1; index < at; index++) {
        sum += (values[index] - values[index - 1]) * half[at - index + 1];
      }
      values[at] = sum / (1 - half[1]);
    }
  }

  int steps() {
    return values.length - 1;
  }

  double time(int index) {
    return index * step;
  }

  /** Failures expected up to a step's time. */
  double at(int index) {
    return values[index];
  }
}
