package leadline.stats;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/** A positive number that a regression fixes, and on the logarithm of which it can set limits. */
public final class RegressionQuantity {

  /** Where the logarithm of a quantity lies among the parameters. */
  interface Placing {

    double logarithm(RealVector parameters);

    /** How it changes with each parameter. */
    RealVector slopes(RealVector parameters);

    /** All parameters of which it has this value. */
    Restriction where(double logarithm);

    /** How the parameters change with it, the free ones of {@link #where} left as they are. */
    RealVector along(RealVector parameters);
  }

  /** Among the parameters of one likelihood. */
  interface Placings {
    Placing of(RegressionLikelihood likelihood, List<String> covariates);
  }

  private final Placings placings;

  private RegressionQuantity(Placings placings) {
    this.placings = placings;
  }

  Placing placing(RegressionLikelihood likelihood, List<String> covariates) {
    return placings.of(likelihood, covariates);
  }

  /** Of the Weibull distributions, the same for all lives. */
  public static RegressionQuantity shape() {
    return new RegressionQuantity((likelihood, covariates) -> new Shape(likelihood.parameters()));
  }

  /** Of the Weibull distribution of lives whose covariates are all 0, in the unit of age. */
  public static RegressionQuantity scale() {
    return new RegressionQuantity((likelihood, covariates) -> new Scale(likelihood));
  }

  /**
   * What the hazard is multiplied by where a covariate is greater by 1.
   *
   * @param covariate its name, one of the regression's
   */
  public static RegressionQuantity hazardRatio(String covariate) {
    return new RegressionQuantity(
        (likelihood, covariates) -> {
          int index = covariates.indexOf(covariate);
          if (index < 0) {
            throw new IllegalArgumentException("no " + covariate + " among " + covariates);
          }
          return new HazardRatio(
              likelihood.parameters(), likelihood.indexOf(index), likelihood.deviation(index));
        });
  }

  private static RealVector unit(int parameters, int index, double value) {
    RealVector unit = new ArrayRealVector(parameters);
    unit.setEntry(index, value);
    return unit;
  }

  private record HazardRatio(int parameters, int index, double deviation) implements Placing {

    @Override
    public double logarithm(RealVector point) {
      return point.getEntry(index) / deviation;
    }

    @Override
    public RealVector slopes(RealVector point) {
      return unit(parameters, index, 1 / deviation);
    }

    @Override
    public Restriction where(double logarithm) {
      return Restriction.setting(parameters, index, logarithm * deviation);
    }

    @Override
    public RealVector along(RealVector point) {
      return unit(parameters, index, deviation);
    }
  }

  private record Shape(int parameters) implements Placing {

    @Override
    public double logarithm(RealVector point) {
      return Math.log(point.getEntry(RegressionLikelihood.SHAPE));
    }

    @Override
    public RealVector slopes(RealVector point) {
      return unit(
          parameters, RegressionLikelihood.SHAPE, 1 / point.getEntry(RegressionLikelihood.SHAPE));
    }

    @Override
    public Restriction where(double logarithm) {
      return Restriction.setting(parameters, RegressionLikelihood.SHAPE, Math.exp(logarithm));
    }

    @Override
    public RealVector along(RealVector point) {
      return unit(
          parameters, RegressionLikelihood.SHAPE, point.getEntry(RegressionLikelihood.SHAPE));
    }
  }

  /** The offset is -shape (log scale - centre) + the effects of covariates from 0 to their mean. */
  private record Scale(RegressionLikelihood likelihood) implements Placing {

    @Override
    public double logarithm(RealVector point) {
      double atZero = point.getEntry(RegressionLikelihood.OFFSET) - point.dotProduct(means());
      return likelihood.centre() - atZero / point.getEntry(RegressionLikelihood.SHAPE);
    }

    @Override
    public RealVector slopes(RealVector point) {
      double shape = point.getEntry(RegressionLikelihood.SHAPE);
      RealVector slopes = means().mapDivide(shape);
      slopes.setEntry(RegressionLikelihood.SHAPE, (likelihood.centre() - logarithm(point)) / shape);
      slopes.setEntry(RegressionLikelihood.OFFSET, -1 / shape);
      return slopes;
    }

    @Override
    public Restriction where(double logarithm) {
      Restriction others =
          Restriction.keeping(
              likelihood.parameters(),
              IntStream.range(0, likelihood.parameters())
                  .filter(index -> index != RegressionLikelihood.OFFSET));
      RealVector offset = means();
      offset.setEntry(RegressionLikelihood.SHAPE, likelihood.centre() - logarithm);
      others.columns().setRowVector(RegressionLikelihood.OFFSET, others.free(offset));
      return others;
    }

    @Override
    public RealVector along(RealVector point) {
      return unit(
          likelihood.parameters(),
          RegressionLikelihood.OFFSET,
          -point.getEntry(RegressionLikelihood.SHAPE));
    }

    /** Of each covariate, in its standard deviations. */
    private RealVector means() {
      RealVector means = new ArrayRealVector(likelihood.parameters());
      for (int index = 0; likelihood.indexOf(index) < likelihood.parameters(); index++) {
        means.setEntry(
            likelihood.indexOf(index), likelihood.mean(index) / likelihood.deviation(index));
      }
      return means;
    }
  }
}
