package leadline.bench;

import java.util.Random;
import leadline.stats.KaplanMeier;
import leadline.stats.ObservedTime;
import leadline.stats.SurvivalTally;

/** A million durations in raw rows, half of them running on when last seen. */
final class GeneratedDurations {

  private static final long GENERATOR = 20_265;
  private static final int ROWS = 1_000_000;
  private static final String OVERHAUL = "overhaul";

  private final double[] hours;
  private final boolean[] ended;

  private GeneratedDurations(double[] hours, boolean[] ended) {
    this.hours = hours;
    this.ended = ended;
  }

  static GeneratedDurations none() {
    return new GeneratedDurations(new double[0], new boolean[0]);
  }

  /**
   * @param grid hours are whole multiples of this
   */
  static GeneratedDurations inMultiplesOf(double grid) {
    Random random = new Random(GENERATOR);
    double[] hours = new double[ROWS];
    boolean[] ended = new boolean[ROWS];
    for (int row = 0; row < ROWS; row++) {
      double end = -8000 * Math.log1p(-random.nextDouble());
      double lastLook = -8000 * Math.log1p(-random.nextDouble());
      hours[row] = Math.rint(Math.min(end, lastLook) / grid) * grid;
      ended[row] = end <= lastLook;
    }
    return new GeneratedDurations(hours, ended);
  }

  /** From the rows to the whole curve. */
  KaplanMeier kaplanMeier() {
    SurvivalTally<String> tally = new SurvivalTally<>();
    for (int row = 0; row < hours.length; row++) {
      tally.add(
          ended[row] ? ObservedTime.ended(hours[row], OVERHAUL) : ObservedTime.censored(hours[row]),
          1);
    }
    return KaplanMeier.of(tally);
  }
}
