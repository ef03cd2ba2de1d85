package leadline.stats;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The power-law process (Crow-AMSAA, Weibull process): events of a unit come independently with
 * intensity lambda beta t^(beta - 1) at its age t. A shape beta below 1 is improvement, above 1
 * deterioration. Source: Crow 1974, Reliability and Biometry, SIAM, 379; MIL-HDBK-189 1981,
 * appendix C; IEC 61164.
 */
public final class PowerLaw {

  /** What maximum likelihood came to. */
  public sealed interface Fit {}

  /**
   * The maximum, a true and only one: the likelihood of the shape is log-concave.
   *
   * @param events of all units, 1 or more
   * @param shape beta, more than 0
   * @param logLambda the natural logarithm of lambda, which counts events of one unit up to age 1;
   *     the logarithm because lambda may be too small for a number
   * @param logLikelihood with the natural logarithm, its constants included
   * @param logShapeStandardError of log beta, by the observed information
   */
  public record Fitted(
      int events,
      double shape,
      double logLambda,
      double logLikelihood,
      double logShapeStandardError)
      implements Fit {

    /** Lambda, events of one unit up to age 1 in the unit of time to the power of the shape. */
    public double lambda() {
      return Math.exp(logLambda);
    }

    /**
     * Events of one unit per unit of time at an age.
     *
     * @param age more than 0
     */
    public double intensityAt(double age) {
      return Math.exp(logLambda + (shape - 1) * Math.log(age)) * shape;
    }
  }

  /** There is no maximum. */
  public enum Unfit implements Fit {
    /** No event: nothing tells of the shape. */
    NO_EVENT,
    /**
     * All events at the latest end of observation: the likelihood rises with the shape for ever.
     */
    SHAPE_WITHOUT_BOUND,
    /** No unit was observed from 0 on, and the likelihood is highest towards a shape of 0. */
    SHAPE_TOWARDS_ZERO
  }

  private PowerLaw() {}

  /**
   * By maximum likelihood, of units that share shape and lambda, whatever their starts and ends;
   * the same whether a set time or an event ended observation. Source: Crow 1974.
   *
   * @throws IllegalArgumentException if there is no unit
   */
  public static Fit fit(List<EventHistory> units) {
    PowerLawSums sums = new PowerLawSums(units);
    if (sums.events() == 0) {
      return Unfit.NO_EVENT;
    }
    if (sums.allEventsAtLatestEnd()) {
      return Unfit.SHAPE_WITHOUT_BOUND;
    }
    if (sums.scoreTowardsZero() <= 0) {
      return Unfit.SHAPE_TOWARDS_ZERO;
    }
    double shape = RisingRoot.of(guess -> -sums.score(guess), 1);
    return new Fitted(
        sums.events(),
        shape,
        sums.logLambda(shape),
        sums.logLikelihood(shape),
        Math.sqrt(1 / sums.information(shape)));
  }

  /**
   * The one-sided upper limit of the shape where the likelihood is highest towards a shape of 0: by
   * the signed root of the likelihood ratio, approximate. Empty elsewhere, and at a confidence of a
   * half or less.
   *
   * @throws IllegalArgumentException if there is no unit
   */
  public static OptionalDouble shapeAtMost(List<EventHistory> units, Confidence confidence) {
    double errors = confidence.oneSidedNormalQuantile();
    if (fit(units) != Unfit.SHAPE_TOWARDS_ZERO || errors <= 0) {
      return OptionalDouble.empty();
    }
    PowerLawSums sums = new PowerLawSums(units);
    double height = sums.logLikelihoodTowardsZero() - errors * errors / 2;
    return OptionalDouble.of(RisingRoot.of(shape -> height - sums.logLikelihood(shape), 1));
  }
}
