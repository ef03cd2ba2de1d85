package leadline.stats;

import java.util.Optional;

/**
 * Renewing a part at set intervals whatever its age, and upon each failure between. Source: Barlow
 * and Proschan 1965, Mathematical Theory of Reliability, section 4.2.
 *
 * @param life of a new part
 * @param costs of a renewal
 */
public record BlockReplacement(AgeingLife life, ReplacementCosts costs) {

  /** Later, the part's history is forgotten, and a longer interval changes costs hardly at all. */
  private static final int MEAN_LIVES = 4;

  private static final int STEPS = 4000;

  /**
   * The best interval, to about a thousandth, and what it costs.
   *
   * @param interval in the life's unit of time
   * @param costRate per unit of time in the long run
   */
  public record Plan(double interval, double costRate) {}

  /** Costs per unit of time in the long run if parts are renewed upon failure only. */
  public double costRateUponFailure() {
    return costs.failure() / life.mean();
  }

  /**
   * The interval, of up to four mean lives, at which costs are least; empty where none is better
   * than waiting for failure.
   */
  public Optional<Plan> optimum() {
    RenewalFunction failures =
        new RenewalFunction(life::failureBy, MEAN_LIVES * life.mean(), STEPS);
    int best = 1;
    for (int index = 2; index <= failures.steps(); index++) {
      if (costRate(failures, index) < costRate(failures, best)) {
        best = index;
      }
    }
    return best < failures.steps() && costRate(failures, best) < costRateUponFailure()
        ? Optional.of(new Plan(failures.time(best), costRate(failures, best)))
        : Optional.empty();
  }

  private double costRate(RenewalFunction failures, int index) {
    return (costs.preventive() + costs.failure() * failures.at(index)) / failures.time(index);
  }
}
