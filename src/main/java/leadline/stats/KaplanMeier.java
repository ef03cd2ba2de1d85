package leadline.stats;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;

/**
 * The product-limit estimate of survival, S(t), the share of durations longer than t, whatever ends
 * them. A duration last seen at a time counts as at risk at that time; one with delayed entry is at
 * risk only after its entry. With delayed entry the curve holds for those that last to the first
 * entry; it stays level while nobody is at risk, and at 0 once all at risk have ended, though
 * others enter later. Source: Kaplan and Meier 1958, J. Am. Stat. Assoc. 53:457.
 */
public final class KaplanMeier {

  private final List<RiskSet> riskSets;
  private final OptionalDouble lastTime;
  private final List<SurvivalPoint> points;

  private KaplanMeier(List<RiskSet> riskSets, OptionalDouble lastTime) {
    this.riskSets = riskSets;
    this.lastTime = lastTime;
    this.points = points(riskSets);
  }

  /** Of all that the tally has counted so far, any cause alike; an empty tally knows nothing. */
  public static KaplanMeier of(SurvivalTally<?> tally) {
    return new KaplanMeier(tally.riskSets(), tally.lastTime());
  }

  /**
   * In time order, one for each time at which a duration ended; before the first, S is 1. Source:
   * Kaplan and Meier 1958.
   */
  public List<SurvivalPoint> points() {
    return points;
  }

  /**
   * The share of durations longer than a time; empty when not known so far, because the time is
   * beyond the last one seen and some were still going on then. Source: Kaplan and Meier 1958.
   *
   * @param time in the unit of the durations, 0 or more
   * @throws IllegalArgumentException if the time is negative or not a number
   */
  public OptionalDouble survivalAt(double time) {
    if (!(time >= 0)) {
      throw new IllegalArgumentException("a time must be 0 or more: " + time);
    }
    return isKnownTo(time) ? OptionalDouble.of(survivalOf(countTo(time))) : OptionalDouble.empty();
  }

  /**
   * The smallest time t with S(t) at most one half, in the unit of the durations; empty when not
   * reached so far. Source: Kaplan and Meier 1958.
   */
  public OptionalDouble median() {
    return quantile(0.5);
  }

  /**
   * As the median, but the middle of the stretch on which S is exactly one half, if there is one
   * and it has an end; in the unit of the durations. Source: Klein and Moeschberger 2003, Survival
   * Analysis, section 4.5; the convention of the R package survival.
   */
  public OptionalDouble medianAtMidpoint() {
    BigDecimal half = new BigDecimal("0.5");
    OptionalDouble reached = firstTime(half, comparison -> comparison <= 0);
    if (reached.isEmpty()) {
      return reached;
    }
    double left = firstTime(half, comparison -> comparison < 0).orElse(reached.getAsDouble());
    return OptionalDouble.of((reached.getAsDouble() + left) / 2);
  }

  /**
   * The smallest time t with S(t) at most 1 - p; empty when not reached so far. Compared without
   * rounding, p being the decimal fraction that it prints as. Source: Kaplan and Meier 1958.
   *
   * @param p the share of durations that have ended, more than 0 and less than 1
   * @throws IllegalArgumentException if p is not between 0 and 1, both excluded
   */
  public OptionalDouble quantile(double p) {
    if (!(p > 0 && p < 1)) {
      throw new IllegalArgumentException("p must lie between 0 and 1: " + p);
    }
    return firstTime(BigDecimal.ONE.subtract(BigDecimal.valueOf(p)), comparison -> comparison <= 0);
  }

  /**
   * Approximate limits of a quantile: the times at which the log(-log S) limits of survival pass 1
   * - p; the upper is infinite where they have not passed it so far. Empty where the quantile is
   * not reached, or all ended at once, which shows no variation. Source: Brookmeyer and Crowley
   * 1982, Biometrics 38:29; the R package survival.
   *
   * @param p the share of durations that have ended, more than 0 and less than 1
   * @throws IllegalArgumentException if p is not between 0 and 1, both excluded
   */
  public Optional<Limits> quantileLimits(double p, Confidence confidence) {
    OptionalDouble lower = firstTime(1 - p, confidence, Limits::lower);
    return quantile(p).isPresent() && lower.isPresent()
        ? Optional.of(
            new Limits(
                lower.getAsDouble(),
                firstTime(1 - p, confidence, Limits::upper).orElse(Double.POSITIVE_INFINITY)))
        : Optional.empty();
  }

  private OptionalDouble firstTime(
      double surviving, Confidence confidence, ToDoubleFunction<Limits> side) {
    return points.stream()
        .filter(
            point ->
                point
                    .logLogLimits(confidence)
                    .filter(limits -> side.applyAsDouble(limits) <= surviving)
                    .isPresent())
        .mapToDouble(SurvivalPoint::time)
        .findFirst();
  }

  /**
   * The mean of durations cut off at a horizon, the area under S; empty when S is not known so far
   * up to the horizon. Its variance is the sum over steps of A^2 d / (n (n - d)), with d events
   * among n at risk and A the area from the step to the horizon. Source: Klein and Moeschberger
   * 2003, Survival Analysis, formulas 4.5.1 and 4.5.2.
   *
   * @param horizon in the unit of the durations, finite and more than 0
   * @throws IllegalArgumentException if the horizon is not finite and positive
   */
  public Optional<RestrictedMean> restrictedMean(double horizon) {
    if (!(horizon > 0 && Double.isFinite(horizon))) {
      throw new IllegalArgumentException("a horizon must be finite and more than 0: " + horizon);
    }
    if (!isKnownTo(horizon)) {
      return Optional.empty();
    }
    double area = 0;
    double variance = 0;
    double end = horizon;
    for (int step = countTo(horizon) - 1; step >= 0; step--) {
      SurvivalPoint point = points.get(step);
      area += point.survival() * (end - point.time());
      variance += area * area * greenwoodTerm(point.atRisk(), point.events());
      end = point.time();
    }
    return Optional.of(new RestrictedMean(area + end, Math.sqrt(variance), horizon));
  }

  private OptionalDouble firstTime(BigDecimal surviving, IntPredicate comparison) {
    ProductLimit product = new ProductLimit();
    for (RiskSet set : riskSets) {
      product.pass(set);
      if (comparison.test(product.compareTo(surviving))) {
        return OptionalDouble.of(set.time());
      }
    }
    return OptionalDouble.empty();
  }

  private boolean isKnownTo(double time) {
    return lastTime.isPresent()
        && (time <= lastTime.getAsDouble() || survivalOf(points.size()) == 0);
  }

  private int countTo(double time) {
    int count = 0;
    while (count < points.size() && points.get(count).time() <= time) {
      count++;
    }
    return count;
  }

  private double survivalOf(int count) {
    return count == 0 ? 1 : points.get(count - 1).survival();
  }

  private static List<SurvivalPoint> points(List<RiskSet> riskSets) {
    List<SurvivalPoint> points = new ArrayList<>();
    ProductLimit product = new ProductLimit();
    double greenwood = 0;
    for (RiskSet set : riskSets) {
      product.pass(set);
      double survival = product.share();
      greenwood += greenwoodTerm(set.atRisk(), set.events());
      OptionalDouble standardError =
          survival == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of(survival * Math.sqrt(greenwood));
      points.add(
          new SurvivalPoint(set.time(), set.atRisk(), set.events(), survival, standardError));
    }
    return List.copyOf(points);
  }

  /** None when nobody is left: then S is 0 from there on, and nothing remains to vary. */
  private static double greenwoodTerm(long atRisk, long events) {
    return events == atRisk ? 0 : events / ((double) atRisk * (atRisk - events));
  }
}
