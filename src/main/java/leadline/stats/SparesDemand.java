package leadline.stats;

import java.util.List;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/** How many spares will be asked for in the time until the next delivery. */
public sealed interface SparesDemand {

  double mean();

  /**
   * The chance that so many spares suffice.
   *
   * @param spares 0 or more
   */
  double sufficiencyOf(long spares);

  /**
   * The fewest spares that suffice with at least a chance.
   *
   * @throws IllegalStateException where no number of spares that a long holds does
   */
  default long holdingFor(Confidence assurance) {
    long enough = Math.max(1, (long) Math.ceil(mean()));
    while (sufficiencyOf(enough) < assurance.level()) {
      if (enough > Long.MAX_VALUE / 2) {
        throw new IllegalStateException("no number of spares suffices");
      }
      enough *= 2;
    }
    long tooFew = -1;
    while (enough - tooFew > 1) {
      long middle = tooFew + (enough - tooFew) / 2;
      if (sufficiencyOf(middle) < assurance.level()) {
        tooFew = middle;
      } else {
        enough = middle;
      }
    }
    return enough;
  }

  /**
   * At a constant rate that is known: Poisson. Source: MIL-HDBK-338B, section on spares.
   *
   * @param mean of the demand, finite and more than 0
   */
  record AtKnownRate(double mean) implements SparesDemand {
    /**
     * @throws IllegalArgumentException if the mean is not finite and positive
     */
    public AtKnownRate {
      requirePositive(mean);
    }

    @Override
    public double sufficiencyOf(long spares) {
      return Gamma.regularizedGammaQ(spares + 1.0, mean);
    }
  }

  /**
   * At a constant rate that is known as far as a gamma distribution tells: negative binomial.
   * Source: Rausand and Hoyland 2004, System Reliability Theory, section 13.3 (the margin of a
   * gamma-Poisson model).
   *
   * @param rate what is known of the rate, per unit of exposure
   * @param exposure of all parts together until the delivery, finite and more than 0
   */
  record AtUncertainRate(GammaPoisson rate, double exposure) implements SparesDemand {
    /**
     * @throws IllegalArgumentException if the exposure is not finite and positive
     */
    public AtUncertainRate {
      requirePositive(exposure);
    }

    @Override
    public double mean() {
      return rate.mean() * exposure;
    }

    @Override
    public double sufficiencyOf(long spares) {
      return Beta.regularizedBeta(
          rate.exposure() / (rate.exposure() + exposure), rate.shape(), spares + 1.0);
    }
  }

  /**
   * Of ageing parts, each asking for at most one spare, with its own chance to fail: the sum of
   * independent trials that differ. A second failure at a position, of a new part, is neglected.
   * Source: Rausand and Hoyland 2004, System Reliability Theory, section 13.3; the distribution by
   * adding part after part.
   *
   * @param chances of each part to fail until the delivery, 0 to 1; at least one
   */
  record OfAgeingParts(List<Double> chances) implements SparesDemand {
    /**
     * @throws IllegalArgumentException if there is no part, or a chance is not 0 to 1
     */
    public OfAgeingParts {
      chances = List.copyOf(chances);
      if (chances.isEmpty() || chances.stream().anyMatch(chance -> !(chance >= 0 && chance <= 1))) {
        throw new IllegalArgumentException("chances must be 0 to 1, at least one: " + chances);
      }
    }

    /**
     * The chance of a part that has lived so long to fail in the time to come.
     *
     * @param age finite, 0 or more, in the life's unit of time
     * @param ahead finite, 0 or more, in the same unit
     */
    public static double chanceToFail(AgeingLife life, double age, double ahead) {
      return 1 - life.survivalBeyond(age + ahead) / life.survivalBeyond(age);
    }

    @Override
    public double mean() {
      return chances.stream().mapToDouble(Double::doubleValue).sum();
    }

    @Override
    public double sufficiencyOf(long spares) {
      if (spares >= chances.size()) {
        return 1;
      }
      double[] asMany = new double[(int) spares + 1];
      asMany[0] = 1;
      for (double chance : chances) {
        for (int failed = asMany.length - 1; failed > 0; failed--) {
          asMany[failed] += chance * (asMany[failed - 1] - asMany[failed]);
        }
        asMany[0] *= 1 - chance;
      }
      double sum = 0;
      for (double chance : asMany) {
        sum += chance;
      }
      return Math.min(1, sum);
    }
  }

  private static void requirePositive(double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException("must be finite and more than 0: " + value);
    }
  }
}
