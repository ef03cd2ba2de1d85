package leadline.stats;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A life distribution fitted by maximum likelihood; ages are in the caller's unit. */
public sealed interface FittedLife permits LifeFit, GammaFit, KnownShapeFit {

  /**
   * The distributions that the data have a fit for, by Akaike's information criterion, the best
   * first; empty where there is none. A difference below 2 says little. Source: Burnham and
   * Anderson 2002, Model Selection and Multimodel Inference, section 2.6.
   */
  static List<FittedLife> byAic(LifeData data) {
    return Stream.of(LifeDistribution.values())
        .map(distribution -> distribution.fit(data).fit())
        .<FittedLife>flatMap(Optional::stream)
        .sorted(Comparator.comparingDouble(FittedLife::aic))
        .toList();
  }

  LifeDistribution distribution();

  /** The natural logarithm of the likelihood, of densities per unit of age; weights multiply. */
  double logLikelihood();

  /**
   * Akaike's information criterion, twice the number of fitted parameters - 2 log likelihood.
   * Source: Akaike 1974.
   */
  double aic();

  /** At the fitted parameters; positive infinity where it is infinite there. */
  double estimate(LifeQuantity quantity);

  /**
   * Approximate limits, a number of standard errors either way on the scale named with the
   * quantity; too narrow with few failures. Where the estimate is infinite, 0 and infinity. Source:
   * Meeker and Escobar 1998, Statistical Methods for Reliability Data, section 8.4.
   */
  Limits waldLimits(LifeQuantity quantity, Confidence confidence);

  /**
   * Approximate limits where the profile likelihood has fallen by half a chi-squared quantile with
   * one degree of freedom; infinite, or 0, where it never does. Where the estimate is infinite, 0
   * and infinity. Source: Meeker and Escobar 1998, Statistical Methods for Reliability Data,
   * section 8.3.
   */
  Limits profileLimits(LifeQuantity quantity, Confidence confidence);

  /**
   * Minus the logarithm of the share that outlives an age, with small relative error also near 0.
   *
   * @param age 0 or more
   */
  double cumulativeHazardTo(double age);

  /**
   * The share that outlives an age.
   *
   * @param age 0 or more
   */
  default double survivalBeyond(double age) {
    return Math.exp(-cumulativeHazardTo(age));
  }

  /**
   * The share that ends by an age.
   *
   * @param age 0 or more
   */
  default double failureBy(double age) {
    return -Math.expm1(-cumulativeHazardTo(age));
  }
}
