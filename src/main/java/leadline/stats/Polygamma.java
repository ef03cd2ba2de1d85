package leadline.stats;

/**
 * First and second derivative of the logarithm of the gamma function, with an error near 1e-15; the
 * library's have one near 1e-9. Recurrence up to 12, and Stirling's series beyond. Source:
 * Abramowitz and Stegun 1964, Handbook of Mathematical Functions, formulas 6.1.40, 6.3.5, 6.3.18,
 * 6.4.6 and 6.4.12.
 */
final class Polygamma {

  /** From here on the series below are exact to the last digit. */
  static final double LARGE = 12;

  private static final double[] LOG_GAMMA = {
    1 / 12.0, -1 / 360.0, 1 / 1260.0, -1 / 1680.0, 1 / 1188.0, -691 / 360_360.0, 1 / 156.0
  };
  private static final double[] DIGAMMA = {
    1 / 12.0, -1 / 120.0, 1 / 252.0, -1 / 240.0, 1 / 132.0, -691 / 32_760.0, 1 / 12.0
  };
  private static final double[] TRIGAMMA = {
    1 / 6.0, -1 / 30.0, 1 / 42.0, -1 / 30.0, 5 / 66.0, -691 / 2730.0, 7 / 6.0
  };

  private Polygamma() {}

  /** log gamma(x) - (x - 1/2) log x + x - log(2 pi) / 2, for a large x. */
  static double logGammaRest(double x) {
    return series(LOG_GAMMA, x) / x;
  }

  /** log x - digamma(x), for x more than 0. */
  static double logLessDigamma(double x) {
    double sum = 0;
    double large = x;
    for (; large < LARGE; large++) {
      sum += 1 / large;
    }
    double rest = 0.5 / large + series(DIGAMMA, large) / (large * large);
    return large == x ? rest : Math.log(x / large) + sum + rest;
  }

  /** 1 / x - trigamma(x), for x more than 0. */
  static double inverseLessTrigamma(double x) {
    double sum = 0;
    double large = x;
    for (; large < LARGE; large++) {
      sum += 1 / (large * large);
    }
    double square = large * large;
    double rest = -(0.5 + series(TRIGAMMA, large) / large) / square;
    return large == x ? rest : 1 / x - 1 / large - sum + rest;
  }

  private static double series(double[] coefficients, double x) {
    double inverseSquare = 1 / (x * x);
    double sum = 0;
    for (int index = coefficients.length - 1; index >= 0; index--) {
      sum = coefficients[index] + inverseSquare * sum;
    }
    return sum;
  }
}
