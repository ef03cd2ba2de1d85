package leadline.stats;

import java.util.Optional;

/**
 * A maximum of the likelihood over shape and offset, with what shows that it is one: a gradient of
 * nearly 0 and second derivatives that fall off on every side.
 */
record Peak(double shape, double offset, Expansion expansion) {

  private static final int MOST_STEPS = 200;
  private static final int MOST_HALVINGS = 60;

  /** Of the expected rise: a full step from here leaves far less than rounding. */
  private static final double NO_RISE = 1e-18;

  /** A fall by this share of the likelihood is one of its last digits. */
  private static final double ROUNDING = 1e-13;

  /** A step takes at most this share of the way to a shape of 0. */
  private static final double MOST_OF_THE_WAY = 0.8;

  /**
   * Of the offset, which is near normal: with a standard error of so much nothing is known of it.
   */
  private static final double UNKNOWN = 1e4;

  /**
   * Newton's steps from a start, halved until the likelihood rises; empty if they lead to no peak.
   * Source: Dennis and Schnabel 1983, Numerical Methods for Unconstrained Optimization, chapter 6.
   *
   * @param shape of the start, more than 0
   */
  static Optional<Peak> near(LikelihoodSurface surface, double shape, double offset) {
    Peak here = new Peak(shape, offset, surface.at(shape, offset));
    for (int step = 0; step < MOST_STEPS && here.expansion.isFinite(); step++) {
      if (here.rise() < NO_RISE && here.expansion.isConcave()) {
        return Optional.of(here);
      }
      Optional<Peak> higher = here.higher(surface);
      if (higher.isEmpty()) {
        return Optional.empty();
      }
      here = higher.get();
    }
    return Optional.empty();
  }

  /** Whether it is no peak, but far out on a slope to a limit that is never reached. */
  boolean isLevel() {
    return !(expansion.determinant() > -expansion.byShapeTwice() / (UNKNOWN * UNKNOWN));
  }

  private Optional<Peak> higher(LikelihoodSurface surface) {
    Expansion here = expansion;
    double damping = here.isConcave() ? 0 : damping(here);
    double shapeTwice = here.byShapeTwice() - damping;
    double offsetTwice = here.byOffsetTwice() - damping;
    double determinant = shapeTwice * offsetTwice - here.byBoth() * here.byBoth();
    double towardsShape =
        -(offsetTwice * here.byShape() - here.byBoth() * here.byOffset()) / determinant;
    double towardsOffset =
        -(shapeTwice * here.byOffset() - here.byBoth() * here.byShape()) / determinant;
    double slope = here.byShape() * towardsShape + here.byOffset() * towardsOffset;
    double rounding = here.isConcave() ? ROUNDING * (1 + Math.abs(here.value())) : 0;
    double share = towardsShape < 0 ? Math.min(1, -MOST_OF_THE_WAY * shape / towardsShape) : 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      double newShape = shape + share * towardsShape;
      double newOffset = offset + share * towardsOffset;
      Expansion there = surface.at(newShape, newOffset);
      if (there.isFinite() && there.value() >= here.value() + 1e-4 * share * slope - rounding) {
        return Optional.of(new Peak(newShape, newOffset, there));
      }
      share /= 2;
    }
    return Optional.empty();
  }

  /** What to take from both second derivatives to make them fall off on every side. */
  private static double damping(Expansion here) {
    double middle = (here.byShapeTwice() + here.byOffsetTwice()) / 2;
    double spread = Math.hypot((here.byShapeTwice() - here.byOffsetTwice()) / 2, here.byBoth());
    return middle + spread + 0.1 * (Math.abs(middle) + spread) + 1e-8;
  }

  /** What Newton's step expects to gain, were the likelihood quadratic. */
  private double rise() {
    Expansion here = expansion;
    return -(here.byOffsetTwice() * here.byShape() * here.byShape()
            - 2 * here.byBoth() * here.byShape() * here.byOffset()
            + here.byShapeTwice() * here.byOffset() * here.byOffset())
        / here.determinant()
        / 2;
  }
}
