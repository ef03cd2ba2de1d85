package leadline.stats;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Gamma;

/**
 * The logarithm of a gamma distributed age at one shape k, as a function of u = log(age / mean),
 * with derivatives by k and u; the derivative by k is taken at the same u. Its density is
 * log-concave in u. Source: Johnson, Kotz and Balakrishnan 1994, Continuous Univariate
 * Distributions, chapter 17. The incomplete gamma function is computed here because the library has
 * no derivative of it by the shape: a series of positive terms below and not far above the mean
 * (Abramowitz and Stegun 1964, formula 6.5.29), else the integral of the tail by the rule of Gauss
 * and Legendre, whose integrand is positive too.
 */
final class GammaAtShape {

  /** From here on the series has too many terms. */
  private static final double LARGE = 50;

  /** Below, a share above the mean is too small to be told from 1 less the rest. */
  private static final double SMALL = 0.05;

  /** The end of an integral: what is left out is e^-38, under the last digit. */
  private static final double DROP = 38;

  private static final int NODES = 40;
  private static final double[] NODE = new double[NODES];
  private static final double[] NODE_WEIGHT = new double[NODES];

  static {
    GaussIntegrator rule = new GaussIntegratorFactory().legendre(NODES, 0, 1);
    for (int node = 0; node < NODES; node++) {
      NODE[node] = rule.getPoint(node);
      NODE_WEIGHT[node] = rule.getWeight(node);
    }
  }

  private final double k;
  private final double constant;
  private final double constantByShape;
  private final double constantByShapeTwice;
  private final double logGamma1p;
  private final double digamma1p;
  private final double trigamma1p;
  private final double highestX;

  /** Of the series: 1 / (k + n), and the first and second derivatives by k over each term. */
  private final double[] factor;

  private final double[] first;
  private final double[] second;

  GammaAtShape(double k) {
    this.k = k;
    constant =
        k >= Polygamma.LARGE
            ? Math.log(k / (2 * Math.PI)) / 2 - Polygamma.logGammaRest(k)
            : k * (Math.log(k) - 1) - Gamma.logGamma(k);
    constantByShape = Polygamma.logLessDigamma(k);
    constantByShapeTwice = Polygamma.inverseLessTrigamma(k);
    logGamma1p = Gamma.logGamma(1 + k);
    digamma1p = Math.log1p(k) - Polygamma.logLessDigamma(1 + k);
    trigamma1p = 1 / (1 + k) - Polygamma.inverseLessTrigamma(1 + k);
    highestX = k + 3 * Math.sqrt(k) + 3;
    int terms = k >= LARGE ? 0 : (int) (60 + 2.5 * k);
    factor = new double[terms];
    first = new double[terms];
    second = new double[terms];
    double sum = 0;
    double squares = 0;
    for (int n = 1; n < terms; n++) {
      factor[n] = 1 / (k + n);
      sum += factor[n];
      squares += factor[n] * factor[n];
      first[n] = -sum;
      second[n] = sum * sum + squares;
    }
  }

  /** Fills in the logarithm of the density of u, which is that of log age. */
  void logDensity(double u, PlaneJet jet) {
    double rise = Math.expm1(u);
    double excess = excess(u, rise);
    jet.set(
        constant - k * excess,
        constantByShape - excess,
        -k * rise,
        constantByShapeTwice,
        -rise,
        -k * (1 + rise));
  }

  /** Fills in the logarithm of the share beyond u, with small relative error also near 0. */
  void logSurvival(double u, PlaneJet jet) {
    if (isTailAbove(u)) {
      logTail(u, 1, jet);
    } else {
      logFailureBelow(u, jet);
      jet.complement();
    }
  }

  /** Fills in the logarithm of the share up to u. */
  void logFailure(double u, PlaneJet jet) {
    if (isTailAbove(u)) {
      logTail(u, 1, jet);
      jet.complement();
    } else {
      logFailureBelow(u, jet);
    }
  }

  /** The u below which a share has ended; Newton's steps rise to it, for log failure is concave. */
  double quantile(double share) {
    double target = Math.log(share);
    PlaneJet jet = new PlaneJet();
    double u = (target + logGamma1p) / k - Math.log(k);
    double step = Double.POSITIVE_INFINITY;
    while (step > 1e-14 * (1 + Math.abs(u)) && !Double.isInfinite(u)) {
      logFailure(u, jet);
      step = (target - jet.value) / jet.byOffset;
      u += step;
    }
    return u;
  }

  private boolean isTailAbove(double u) {
    return u >= 0 && (k < SMALL || k >= LARGE || k * Math.exp(u) > highestX);
  }

  private void logFailureBelow(double u, PlaneJet jet) {
    if (k >= LARGE) {
      logTail(u, -1, jet);
    } else {
      logSeries(u, jet);
    }
  }

  private void logSeries(double u, PlaneJet jet) {
    double x = k * Math.exp(u);
    double term = 1;
    double sum = 1;
    double byShape = 0;
    double byShapeTwice = 0;
    for (int n = 1; n < factor.length && term > 1e-18 * sum; n++) {
      term *= x * factor[n];
      sum += term;
      byShape += term * first[n];
      byShapeTwice += term * second[n];
    }
    double reversedHazard = k / sum;
    double meanOfFirst = byShape / sum;
    double logX = u + Math.log(k);
    double curve = reversedHazard * (k - x - reversedHazard);
    double both = reversedHazard * (1 / k - meanOfFirst);
    // The series is differentiated at the same x; at the same u, log x grows by 1 / k.
    jet.set(
        k * logX - x - logGamma1p + Math.log(sum),
        logX - digamma1p + meanOfFirst + reversedHazard / k,
        reversedHazard,
        byShapeTwice / sum
            - meanOfFirst * meanOfFirst
            - trigamma1p
            + (2 * both + (curve - reversedHazard) / k) / k,
        both + curve / k,
        curve);
  }

  /**
   * The share beyond u, on the side of the sign, over the density at u is the integral over v from
   * 0 of exp(-k (expm1(w) - w + expm1(u) expm1(w))) with w = v or w = -v.
   */
  private void logTail(double u, int sign, PlaneJet jet) {
    double rise = Math.expm1(u);
    double end = tailEnd(u, rise, sign);
    double mass = 0;
    double slope = 0;
    double curve = 0;
    for (int node = 0; node < NODES; node++) {
      double a = -fall(sign * end * NODE[node], rise);
      double part = NODE_WEIGHT[node] * Math.exp(k * a);
      mass += part;
      slope += part * a;
      curve += part * a * a;
    }
    double mean = slope / mass;
    double hazard = 1 / (mass * end);
    logDensity(u, jet);
    jet.set(
        jet.value - Math.log(hazard),
        jet.byShape + mean,
        -sign * hazard,
        jet.byShapeTwice + curve / mass - mean * mean,
        sign * hazard * mean,
        -sign * hazard * (jet.byOffset + sign * hazard));
  }

  /** Newton's steps fall to it from beyond, for the fall is convex. */
  private double tailEnd(double u, double rise, int sign) {
    double target = DROP / k;
    double end =
        sign < 0
            ? target + 1
            : Math.min(
                2 * target / (rise + Math.sqrt(rise * rise + 2 * target)),
                Math.log1p((target + 60) * Math.exp(-u)));
    double step = end;
    while (step > 1e-3 * end) {
      double w = sign * end;
      double slope = sign * (Math.expm1(w) + rise * Math.exp(w));
      step = (fall(w, rise) - target) / slope;
      end -= step;
    }
    return end;
  }

  private static double fall(double w, double rise) {
    double expm1 = Math.expm1(w);
    return excess(w, expm1) + rise * expm1;
  }

  /** Of e^x - 1 over x, which the difference would leave without digits near 0. */
  private static double excess(double x, double expm1) {
    if (Math.abs(x) > 0.1) {
      return expm1 - x;
    }
    double sum = 1;
    for (int n = 10; n > 2; n--) {
      sum = 1 + sum * x / n;
    }
    return x * x / 2 * sum;
  }
}
