package leadline.stats;

import java.util.Optional;
import leadline.stats.RegressionLikelihood.Slopes;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/**
 * Newton's way up the likelihood of a regression, halved until it rises, damped where the
 * likelihood is not concave. Source: Dennis and Schnabel 1983, Numerical Methods for Unconstrained
 * Optimization, chapter 6.
 */
record Ascent(RegressionLikelihood likelihood, Restriction restriction) {

  private static final int MOST_STEPS = 200;
  private static final int MOST_HALVINGS = 60;

  /** Of the expected rise: a full step from here leaves far less than rounding. */
  private static final double NO_RISE = 1e-18;

  /** A fall by this share of the likelihood is one of its last digits. */
  private static final double ROUNDING = 1e-13;

  /** A step takes at most this share of the way to a shape of 0. */
  private static final double MOST_OF_THE_WAY = 0.8;

  /**
   * A point on the way.
   *
   * @param free the free parameters
   * @param all all parameters there
   * @param step what Newton's method would change the free ones by
   * @param rise what that is expected to gain
   * @param damping 0 where the likelihood falls off on every side
   */
  record Point(
      RealVector free,
      RealVector all,
      Slopes slopes,
      RealVector step,
      double rise,
      double damping) {

    double shape() {
      return all.getEntry(RegressionLikelihood.SHAPE);
    }

    double value() {
      return slopes.value();
    }

    /** Nothing is gained by going on, though the way may lead to infinity. */
    boolean isLevel() {
      return rise < NO_RISE;
    }
  }

  Point at(RealVector free) {
    return at(free, likelihood.at(restriction.all(free)));
  }

  private Point at(RealVector free, Slopes slopes) {
    RealVector gradient = restriction.gradient(slopes.gradient());
    NewtonSystem system = NewtonSystem.of(restriction.curvature(slopes.curvature()));
    RealVector step = bounded(system.step(gradient), system, restriction.all(free));
    return new Point(
        free, restriction.all(free), slopes, step, gradient.dotProduct(step) / 2, system.damping());
  }

  /** Where it would lead to no shape, the best step of those that do not. */
  private RealVector bounded(RealVector step, NewtonSystem system, RealVector all) {
    double least = -MOST_OF_THE_WAY * all.getEntry(RegressionLikelihood.SHAPE);
    if (restriction.kept().get(0) != RegressionLikelihood.SHAPE || step.getEntry(0) >= least) {
      return step;
    }
    RealVector shape = new ArrayRealVector(step.getDimension());
    shape.setEntry(0, 1);
    RealVector back = system.step(shape);
    return step.add(back.mapMultiply((least - step.getEntry(0)) / back.getEntry(0)));
  }

  /**
   * As high as the way leads from there, be it towards infinity.
   *
   * @param start where the likelihood is finite
   */
  Point highest(RealVector start) {
    Point here = at(start);
    for (int step = 0; step < MOST_STEPS && !here.isLevel(); step++) {
      Optional<Point> higher = higher(here);
      if (higher.isEmpty()) {
        return here;
      }
      here = higher.get();
    }
    return here;
  }

  /** The next point; empty where no share of the step leads higher. */
  Optional<Point> higher(Point here) {
    double share = 1;
    double rounding = ROUNDING * (1 + Math.abs(here.value()));
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      RealVector there = here.free().add(here.step().mapMultiply(share));
      Slopes slopes = likelihood.at(restriction.all(there));
      if (slopes.isFinite()
          && slopes.value() >= here.value() + 2e-4 * share * here.rise() - rounding) {
        return Optional.of(at(there, slopes));
      }
      share /= 2;
    }
    return Optional.empty();
  }
}
