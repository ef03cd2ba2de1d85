package leadline.stats;

/**
 * A function whose failure shows only when it is tested; a part found failed or sound in a test is
 * as good as new after it. Source: Rausand and Hoyland 2004, System Reliability Theory, section
 * 10.3; SAE JA1012.
 *
 * @param life of the function, from as good as new
 * @param tested the chance that a test that is due is made, more than 0, at most 1
 */
public record HiddenFailure(AgeingLife life, double tested) {

  /** Intervals so improbable to pass without a test add nothing. */
  private static final double NEGLIGIBLE = 1e-17;

  /**
   * @throws IllegalArgumentException if the chance is not more than 0 and at most 1
   */
  public HiddenFailure {
    if (!(tested > 0 && tested <= 1)) {
      throw new IllegalArgumentException("tested must be more than 0, at most 1: " + tested);
    }
  }

  /**
   * The mean share of time for which the function is lost, if tests are due every so often: 1 less
   * the mean time alive between tests made over the mean time between them.
   *
   * @param interval in the life's unit of time, finite and more than 0
   */
  public double unavailability(double interval) {
    double lost = 0;
    double untested = 1;
    for (int passed = 1; untested > NEGLIGIBLE; passed++) {
      double time = passed * interval;
      lost += untested * tested * (time - life.meanUpTo(time));
      untested *= 1 - tested;
    }
    return lost * tested / interval;
  }

  /**
   * The interval of tests due at which the mean unavailability is as required, in the life's unit
   * of time.
   *
   * @param unavailability a share of time, more than 0 and less than 1
   * @throws IllegalArgumentException if the share is not between 0 and 1, both excluded
   */
  public double intervalFor(double unavailability) {
    if (!(unavailability > 0 && unavailability < 1)) {
      throw new IllegalArgumentException(
          "unavailability must lie between 0 and 1: " + unavailability);
    }
    return RisingRoot.of(
        interval -> unavailability(interval) - unavailability, life.mean() * unavailability);
  }
}
