package leadline.stats;

import java.util.function.Function;

/**
 * A number that a life distribution fixes, on which a fit can set limits. Wald limits are taken on
 * the scale named with each.
 */
public final class LifeQuantity {

  private final Function<Charts, Chart> chart;

  private LifeQuantity(Function<Charts, Chart> chart) {
    this.chart = chart;
  }

  /** The quantity among those of a family. */
  Chart among(Charts charts) {
    return chart.apply(charts);
  }

  /**
   * Its value in a distribution of a family.
   *
   * @param shape 1 / sigma, finite and more than 0
   * @param scale exp(mu), in the unit of age, finite and more than 0
   */
  public double in(LifeFamily family, double shape, double scale) {
    Chart here = among(new LocationScaleCharts(family.standardForm(), 0));
    return here.quantity(here.coordinate(shape, -shape * Math.log(scale)));
  }

  /** The family's shape; limits on the scale of its logarithm. */
  public static LifeQuantity shape() {
    return new LifeQuantity(Charts::shape);
  }

  /**
   * 1 / shape, which is the scale of log age except for the gamma distribution; limits on the scale
   * of its logarithm.
   */
  public static LifeQuantity sigma() {
    return new LifeQuantity(Charts::sigma);
  }

  /** The family's scale, in the unit of age; limits on the scale of its logarithm. */
  public static LifeQuantity scale() {
    return new LifeQuantity(Charts::scale);
  }

  /**
   * The age by which a share has ended, in the unit of age: B10 for a tenth. Limits on the scale of
   * its logarithm.
   *
   * @throws IllegalArgumentException if the share is not between 0 and 1, both excluded
   */
  public static LifeQuantity quantile(double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("a share must lie between 0 and 1: " + share);
    }
    return new LifeQuantity(charts -> charts.quantile(share));
  }

  /**
   * The mean age at the end, in the unit of age; limits on the scale of its logarithm. Positive
   * infinity for a log-logistic distribution with a shape of 1 or less.
   */
  public static LifeQuantity mean() {
    return new LifeQuantity(Charts::mean);
  }

  /**
   * The share that outlives an age; limits on the scale of (log age - mu) / sigma, for the gamma
   * distribution on that of the logarithm of the cumulative hazard.
   *
   * @throws IllegalArgumentException if the age is not finite and positive
   */
  public static LifeQuantity survivalAt(double age) {
    requirePositive(age);
    return new LifeQuantity(charts -> charts.survivalAt(age));
  }

  /**
   * Of those that reach an age, the share that ends within the next so many hours; limits on the
   * scale of the logarithm of the cumulative hazard over them. Source: Meeker and Escobar 1998,
   * Statistical Methods for Reliability Data, section 2.1.
   *
   * @param hours in the unit of age
   * @throws IllegalArgumentException if age or hours are not finite and positive
   */
  public static LifeQuantity failureWithin(double hours, double age) {
    requirePositive(hours);
    requirePositive(age);
    return new LifeQuantity(charts -> charts.failureWithin(hours, age));
  }

  private static void requirePositive(double number) {
    if (!(number > 0 && Double.isFinite(number))) {
      throw new IllegalArgumentException("must be finite and more than 0: " + number);
    }
  }
}
