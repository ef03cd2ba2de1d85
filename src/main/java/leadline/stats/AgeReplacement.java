package leadline.stats;

import java.util.OptionalDouble;

/**
 * Renewing a part at a set age or upon failure, whichever comes first. Source: Barlow and Proschan
 * 1965, Mathematical Theory of Reliability, section 4.2.
 *
 * @param life of a new part
 * @param costs of a renewal
 */
public record AgeReplacement(AgeingLife life, ReplacementCosts costs) {

  /** So many mean lives are for ever. */
  private static final double FARTHEST = 1e100;

  /** Costs per unit of time in the long run if each part is renewed at an age, more than 0. */
  public double costRateAt(double age) {
    return (costs.preventive() * life.survivalBeyond(age) + costs.failure() * life.failureBy(age))
        / life.meanUpTo(age);
  }

  /** Costs per unit of time in the long run if parts are renewed upon failure only. */
  public double costRateUponFailure() {
    return costs.failure() / life.mean();
  }

  /**
   * The age of renewal at which costs are least, in the life's unit of time: where h(t) times the
   * mean up to t, less F(t), is the preventive cost over the cost that it saves. Empty where no age
   * is better than waiting for failure: a failure costs no more, or the hazard does not rise (far)
   * enough.
   */
  public OptionalDouble optimalAge() {
    double ratio = costs.preventive() / (costs.failure() - costs.preventive());
    double farthest = Math.min(life.hazardRisesUpTo(), FARTHEST * life.mean());
    if (costs.failure() <= costs.preventive() || farthest == 0 || excess(farthest) < ratio) {
      return OptionalDouble.empty();
    }
    double age =
        RisingRoot.of(
            at -> at >= farthest ? 1 : clip(excess(at) - ratio), Math.min(life.mean(), farthest));
    return costRateAt(age) < costRateUponFailure()
        ? OptionalDouble.of(age)
        : OptionalDouble.empty();
  }

  /** Costs per unit of time at the optimal age, or upon failure if there is none. */
  public double optimalCostRate() {
    OptionalDouble age = optimalAge();
    return age.isPresent() ? costRateAt(age.getAsDouble()) : costRateUponFailure();
  }

  private double excess(double age) {
    return life.hazardAt(age) * life.meanUpTo(age) - life.failureBy(age);
  }

  /** A solver cannot work with infinity. */
  private static double clip(double value) {
    return Math.min(value, Double.MAX_VALUE);
  }
}
