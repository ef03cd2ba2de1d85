package leadline.stats;

/**
 * A number that a life distribution fixes, on which a fit can set limits. Wald limits are taken on
 * the scale named with each.
 */
public final class LifeQuantity {

  /** Where a quantity lies among the parameters of a family. */
  interface Placing {
    Chart chart(StandardForm form, double centre);
  }

  private final Placing placing;

  private LifeQuantity(Placing placing) {
    this.placing = placing;
  }

  Chart chart(StandardForm form, double centre) {
    return placing.chart(form, centre);
  }

  /**
   * Its value in a distribution of a family.
   *
   * @param shape 1 / sigma, finite and more than 0
   * @param scale exp(mu), in the unit of age, finite and more than 0
   */
  public double in(LifeFamily family, double shape, double scale) {
    Chart chart = chart(family.standardForm(), 0);
    return chart.quantity(chart.coordinate(shape, -shape * Math.log(scale)));
  }

  /** 1 / sigma; limits on the scale of its logarithm. */
  public static LifeQuantity shape() {
    return new LifeQuantity((form, centre) -> new ShapeChart(ShapeChart.Power.SHAPE));
  }

  /** 1 / shape, the scale of log age; limits on the scale of its logarithm. */
  public static LifeQuantity sigma() {
    return new LifeQuantity((form, centre) -> new ShapeChart(ShapeChart.Power.SIGMA));
  }

  /** exp(mu), in the unit of age; limits on the scale of its logarithm. */
  public static LifeQuantity scale() {
    return new LifeQuantity((form, centre) -> AgeChart.where(0, centre));
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
    return new LifeQuantity((form, centre) -> AgeChart.where(form.quantile(share), centre));
  }

  /**
   * The mean age at the end, in the unit of age; limits on the scale of its logarithm. Positive
   * infinity for a log-logistic distribution with a shape of 1 or less.
   */
  public static LifeQuantity mean() {
    return new LifeQuantity(
        (form, centre) -> new AgeChart(form::logMean, form.leastShapeWithMean(), centre));
  }

  /**
   * The share that outlives an age; limits on the scale of (log age - mu) / sigma.
   *
   * @throws IllegalArgumentException if the age is not finite and positive
   */
  public static LifeQuantity survivalAt(double age) {
    requirePositive(age);
    return new LifeQuantity((form, centre) -> new SurvivalChart(form, Math.log(age) - centre));
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
    return new LifeQuantity(
        (form, centre) -> new FailureChart(form, Math.log(age) - centre, Math.log1p(hours / age)));
  }

  private static void requirePositive(double number) {
    if (!(number > 0 && Double.isFinite(number))) {
      throw new IllegalArgumentException("must be finite and more than 0: " + number);
    }
  }
}
