package leadline.stats;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import leadline.stats.ProfileLikelihood.Side;
import leadline.stats.RegressionQuantity.Placing;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Weibull lives whose hazards are proportional: covariates x multiply the hazard by exp(coefficient
 * x) at every age, S(t) = exp(-(t / scale)^shape exp(sum of coefficient x)). Fitted by maximum
 * likelihood to lives of any censoring, with delayed entry. The same model stretches ages: one more
 * of a covariate divides every age by exp(coefficient / shape), the accelerated form. Source:
 * Lawless 2003, Statistical Models and Methods for Lifetime Data, sections 6.1 and 6.3; Kalbfleisch
 * and Prentice 2002, The Statistical Analysis of Failure Time Data, section 2.3.
 */
public final class WeibullRegression {

  private static final int PARAMETERS_WITHOUT_COVARIATES = 2;

  private final List<String> covariates;
  private final RegressionLikelihood likelihood;
  private final Ascent.Point top;
  private final RealMatrix covariance;

  WeibullRegression(List<String> covariates, RegressionLikelihood likelihood, Ascent.Point top) {
    this.covariates = covariates;
    this.likelihood = likelihood;
    this.top = top;
    this.covariance = NewtonSystem.of(top.slopes().curvature()).inverse();
  }

  /**
   * Fits a regression. Without delayed entry the likelihood is concave, so that the fit is the one
   * highest point; with it, the highest that several starts lead to, except that without intervals
   * there is one peak even so: log hazard is linear in log age and covariates.
   */
  public static RegressionOutcome of(RegressionData data) {
    return new RegressionSearch(data).outcome();
  }

  /** Names, in the order of the data. */
  public List<String> covariates() {
    return covariates;
  }

  /** The natural logarithm of the likelihood, of densities per unit of age; weights multiply. */
  public double logLikelihood() {
    return top.value();
  }

  /** Akaike's information criterion. Source: Akaike 1974. */
  public double aic() {
    return 2 * (PARAMETERS_WITHOUT_COVARIATES + covariates.size()) - 2 * logLikelihood();
  }

  /**
   * What is left of the slopes of the log likelihood at the fit: by log scale, log shape and each
   * coefficient, covariates counted from their means. Nearly 0.
   */
  public List<Double> slopes() {
    RealVector gradient = top.slopes().gradient();
    double byOffset = gradient.getEntry(RegressionLikelihood.OFFSET);
    List<Double> slopes = new ArrayList<>();
    slopes.add(-top.shape() * byOffset);
    slopes.add(
        top.shape() * gradient.getEntry(RegressionLikelihood.SHAPE)
            + top.all().getEntry(RegressionLikelihood.OFFSET) * byOffset);
    for (int covariate = 0; covariate < covariates.size(); covariate++) {
      slopes.add(
          likelihood.deviation(covariate) * gradient.getEntry(likelihood.indexOf(covariate)));
    }
    return List.copyOf(slopes);
  }

  /**
   * The logarithm of the hazard ratio of a covariate.
   *
   * @throws IllegalArgumentException if there is no such covariate
   */
  public double coefficient(String covariate) {
    return logarithm(RegressionQuantity.hazardRatio(covariate));
  }

  /** The natural logarithm at the fitted parameters. */
  public double logarithm(RegressionQuantity quantity) {
    return placing(quantity).logarithm(top.all());
  }

  /**
   * The logarithm of what an age is multiplied by where a covariate is greater by 1: -coefficient /
   * shape.
   */
  public double acceleratedCoefficient(String covariate) {
    return -coefficient(covariate) / top.shape();
  }

  /** Of the natural logarithm, by the observed information. */
  public double standardErrorOfLogarithm(RegressionQuantity quantity) {
    RealVector slopes = placing(quantity).slopes(top.all());
    return Math.sqrt(slopes.dotProduct(covariance.operate(slopes)));
  }

  /** At the fitted parameters. */
  public double estimate(RegressionQuantity quantity) {
    return Math.exp(logarithm(quantity));
  }

  /**
   * Approximate limits, a number of standard errors either way on the scale of the logarithm; too
   * narrow with few failures. Source: Lawless 2003, section 6.3.
   */
  public Limits waldLimits(RegressionQuantity quantity, Confidence confidence) {
    double margin = confidence.normalQuantile() * standardErrorOfLogarithm(quantity);
    return limits(logarithm(quantity) - margin, logarithm(quantity) + margin);
  }

  /**
   * Approximate limits where the profile likelihood has fallen by half a chi-squared quantile with
   * one degree of freedom; infinite, or 0, where it never does. Source: Lawless 2003, section 6.3;
   * Meeker and Escobar 1998, Statistical Methods for Reliability Data, section 17.5.
   */
  public Limits profileLimits(RegressionQuantity quantity, Confidence confidence) {
    double errors = confidence.normalQuantile();
    double height = top.value() - errors * errors / 2;
    double margin = errors * standardErrorOfLogarithm(quantity);
    RegressionProfile profile = new RegressionProfile(likelihood, placing(quantity), top.all());
    return limits(
        profile.fallen(Side.BELOW, height, margin), profile.fallen(Side.ABOVE, height, margin));
  }

  private static Limits limits(double lower, double upper) {
    return new Limits(Math.min(Math.exp(lower), Double.MAX_VALUE), Math.exp(upper));
  }

  /**
   * The likelihood-ratio test of whether some covariates have no effect, the others kept: a degree
   * of freedom for each. Approximate. Source: Lawless 2003, section 6.3; Wilks 1938, Annals of
   * Mathematical Statistics 9:60.
   *
   * @throws IllegalArgumentException if there is none, or no such covariate
   */
  public ChiSquared test(Collection<String> absent) {
    List<Integer> indices = absent.stream().distinct().map(covariates::indexOf).toList();
    if (indices.isEmpty() || indices.contains(-1)) {
      throw new IllegalArgumentException("not among " + covariates + ": " + absent);
    }
    List<Integer> without = indices.stream().map(likelihood::indexOf).toList();
    Restriction others =
        Restriction.keeping(
            likelihood.parameters(),
            IntStream.range(0, likelihood.parameters()).filter(index -> !without.contains(index)));
    double value = new Ascent(likelihood, others).highest(others.free(top.all())).value();
    return new ChiSquared(Math.max(0, 2 * (top.value() - value)), indices.size());
  }

  private Placing placing(RegressionQuantity quantity) {
    return quantity.placing(likelihood, covariates);
  }
}
