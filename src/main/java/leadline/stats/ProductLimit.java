package leadline.stats;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * The share surviving one risk set after another, as a running product. Where nobody comes or goes
 * between two risk sets the factors cancel, so that without censoring the share is a plain quotient
 * of counts.
 */
final class ProductLimit {

  /** Far more than the rounding of a product of any length in use, about 1e-16 a factor. */
  private static final double ROUNDING = 1e-9;

  private record Run(long atRisk, long remaining) {
    double share() {
      return (double) remaining / atRisk;
    }
  }

  private final List<Run> closed = new ArrayList<>();
  private double closedShare = 1;
  private Run open = new Run(1, 1);

  void pass(RiskSet set) {
    long remaining = set.atRisk() - set.events();
    if (set.atRisk() == open.remaining) {
      open = new Run(open.atRisk, remaining);
    } else {
      closed.add(open);
      closedShare *= open.share();
      open = new Run(set.atRisk(), remaining);
    }
  }

  double share() {
    return closedShare * open.share();
  }

  /** Compares as if there were no rounding: counts decide what the double product cannot. */
  int compareTo(BigDecimal share) {
    double difference = share() - share.doubleValue();
    if (Math.abs(difference) > ROUNDING) {
      return difference < 0 ? -1 : 1;
    }
    BigInteger surviving =
        product(closed, Run::remaining).multiply(BigInteger.valueOf(open.remaining));
    BigInteger atRisk = product(closed, Run::atRisk).multiply(BigInteger.valueOf(open.atRisk));
    return new BigDecimal(surviving).compareTo(share.multiply(new BigDecimal(atRisk)));
  }

  /** By halves, for numbers of like length multiply fastest. */
  private static BigInteger product(List<Run> runs, ToLongFunction<Run> factor) {
    int half = runs.size() / 2;
    return switch (runs.size()) {
      case 0 -> BigInteger.ONE;
      case 1 -> BigInteger.valueOf(factor.applyAsLong(runs.get(0)));
      default ->
          product(runs.subList(0, half), factor)
              .multiply(product(runs.subList(half, runs.size()), factor));
    };
  }
}
