package leadline.stats;

/** A life distribution fitted by maximum likelihood, whatever its family. */
public sealed interface FittedLife permits LifeFit, KnownShapeFit {

  /** Akaike's information criterion. */
  double aic();

  /** At the fitted parameters. */
  double estimate(LifeQuantity quantity);

  /** Approximate limits where the profile likelihood has fallen. */
  Limits profileLimits(LifeQuantity quantity, Confidence confidence);
}
