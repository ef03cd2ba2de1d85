package leadline.stats;

/** The likelihood over the offset at one shape. */
record OffsetSection(LikelihoodSurface surface, double shape) {

  private static final int MOST_STEPS = 200;

  /** All but infinite for an offset, which is near normal. */
  private static final double FAR = 1e4;

  /** Enough for a likelihood of any usual bend; one that falls like e^-e^x takes them too short. */
  private static final int NEWTON_STEPS = 12;

  /** In standard errors: the step after one so small is lost in rounding. */
  private static final double LAST_STEP = 1e-7;

  Expansion at(double offset) {
    return surface.at(shape, offset);
  }

  /** Where it is highest, by Newton's steps that never fall. */
  double highest(double start) {
    double offset = start;
    Expansion here = at(offset);
    for (int step = 0; step < MOST_STEPS; step++) {
      double move =
          here.byOffsetTwice() < 0
              ? -here.byOffset() / here.byOffsetTwice()
              : Math.signum(here.byOffset());
      Expansion there = at(offset + move);
      while (!(there.value() >= here.value()) && Math.abs(move) > 1e-12) {
        move /= 2;
        there = at(offset + move);
      }
      offset += move;
      here = there;
      if (Math.abs(move) * Math.sqrt(Math.abs(here.byOffsetTwice())) < LAST_STEP) {
        break;
      }
    }
    return offset;
  }

  /**
   * Where it has fallen to a height on the way from the highest point, or far out if it never does.
   *
   * @param away a first step to one side, not 0
   */
  double fallen(double highest, double away, double height) {
    double inside = highest;
    double step = away;
    double outside = inside + step;
    while (at(outside).value() > height) {
      if (Math.abs(outside) > FAR) {
        return outside;
      }
      inside = outside;
      step *= 1.5;
      outside += step;
    }
    return crossing(inside, outside, height);
  }

  /** Newton's steps, which a concave likelihood lets overshoot nowhere, else halving. */
  double crossing(double above, double below, double height) {
    double inside = above;
    double outside = below;
    double point = below;
    for (int step = 0; step < MOST_STEPS; step++) {
      Expansion here = at(point);
      if (here.value() > height) {
        inside = point;
      } else {
        outside = point;
      }
      double newton = point + (height - here.value()) / here.byOffset();
      if (here.isFinite() && Math.abs(newton - point) < 1e-13 * (1 + Math.abs(point))) {
        return newton;
      }
      boolean isBetween = (newton - inside) * (newton - outside) < 0;
      boolean isSlow = step > NEWTON_STEPS && step % 2 == 0;
      point = isBetween && !isSlow ? newton : (inside + outside) / 2;
    }
    return point;
  }
}
