package leadline.stats;

/** The likelihood maximised over the offset at one shape, by Newton's steps that never fall. */
final class HighestOffset {

  private static final int MOST_STEPS = 200;

  /** In standard errors: the step after one so small is lost in rounding. */
  private static final double LAST_STEP = 1e-7;

  private HighestOffset() {}

  static double at(double shape, LogLikelihood logLikelihood, double start) {
    double offset = start;
    Expansion here = logLikelihood.at(shape, offset);
    for (int step = 0; step < MOST_STEPS; step++) {
      double move =
          here.byOffsetTwice() < 0
              ? -here.byOffset() / here.byOffsetTwice()
              : Math.signum(here.byOffset());
      Expansion there = logLikelihood.at(shape, offset + move);
      while (!(there.value() >= here.value()) && Math.abs(move) > 1e-12) {
        move /= 2;
        there = logLikelihood.at(shape, offset + move);
      }
      offset += move;
      here = there;
      if (Math.abs(move) * Math.sqrt(Math.abs(here.byOffsetTwice())) < LAST_STEP) {
        break;
      }
    }
    return offset;
  }
}
