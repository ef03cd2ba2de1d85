package leadline.chart;

import java.util.List;
import java.util.stream.LongStream;

/**
 * Numbers from zero to a round end, laid along a line of a drawing.
 *
 * @param end the greatest number, above zero
 * @param step from one tick to the next
 * @param from where zero lies, in pixels
 * @param to where the end lies, in pixels
 */
record Scale(double end, double step, double from, double to) {

  private static final int MOST_STEPS = 6;

  /** Ends at the first round number that is not below the greatest. */
  static Scale upTo(double greatest, double from, double to) {
    double reach = greatest > 0 ? greatest : 1;
    double step = roundStep(reach / MOST_STEPS);
    return new Scale(Math.ceil(reach / step - 1e-9) * step, step, from, to);
  }

  private static double roundStep(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double factor : new double[] {1, 2, 2.5, 5}) {
      if (factor * power >= least) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  /** Numbers beyond the end are drawn at the end. */
  double at(double number) {
    return from + (to - from) * Math.max(0, Math.min(1, number / end));
  }

  List<Double> ticks() {
    return LongStream.rangeClosed(0, Math.round(end / step)).mapToObj(tick -> tick * step).toList();
  }
}
