package leadline.stats;

/**
 * A function's value with its first and second derivative at one point. It can be set anew, for it
 * is filled once for each life at each step of a fit.
 */
final class Jet {

  double value;
  double first;
  double second;

  void set(double newValue, double newFirst, double newSecond) {
    value = newValue;
    first = newFirst;
    second = newSecond;
  }

  /** From the logarithm of a survival to the logarithm of its complement. */
  void complement() {
    double failure = logComplement(value);
    double odds = Math.exp(value - failure);
    double hazard = -first;
    set(failure, hazard * odds, -second * odds - hazard * hazard * odds * (1 + odds));
  }

  /**
   * The logarithm of 1 - e^x for x below 0, accurate at either end. Source: Maechler 2012,
   * Accurately computing log(1 - exp(-|a|)), R package Rmpfr.
   */
  static double logComplement(double x) {
    return x > -0.6931471805599453 ? Math.log(-Math.expm1(x)) : Math.log1p(-Math.exp(x));
  }
}
