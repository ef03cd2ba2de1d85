package leadline.study;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadline.stats.Life;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.random.RandomGenerator;

/**
 * Weibull lives, how they are watched, and for how long: the scale is such that a number of
 * failures is expected to be known of.
 *
 * @param scale in hours
 * @param failures expected
 */
record Design(Watch watch, int lives, double failures, double shape, double scale) {

  /**
   * How lives are watched.
   *
   * @param lastLook in hours, from a number uniform between 0 and 1
   */
  record Watch(String name, DoubleUnaryOperator lastLook, Eye eye) {

    boolean seesEnds() {
      return eye.of(1, 2) instanceof Life.FailedAt;
    }
  }

  /** What is known of a life that ended by the last look. */
  interface Eye {
    Life of(double end, double lastLook);
  }

  /** All for as long. */
  static Watch followedTo(double hours) {
    return new Watch(
        "followed to " + Math.round(hours) + " h",
        uniform -> hours,
        (end, last) -> Life.failedAt(end));
  }

  /** Right-censored at random. */
  static Watch followedUpTo(double hours) {
    return new Watch(
        "followed to 0-" + Math.round(hours) + " h",
        uniform -> hours * uniform,
        (end, last) -> Life.failedAt(end));
  }

  /** Opened again and again, as often as chance has it. */
  static Watch openedEvery(double hours, int atMost) {
    return new Watch(
        "opened every " + Math.round(hours) + " h, up to " + atMost + " times",
        uniform -> hours * Math.ceil(atMost * uniform),
        (end, last) -> {
          double before = hours * (Math.ceil(end / hours) - 1);
          return Life.failedBetween(before, before + hours);
        });
  }

  /** Current status: opened once, at whatever age. */
  static Watch openedOnce(double hours) {
    return new Watch(
        "opened once at 0-" + Math.round(hours) + " h",
        uniform -> hours * uniform,
        (end, last) -> Life.failedBetween(0, last));
  }

  static Design of(Watch watch, int lives, double failures, double shape) {
    ToDoubleFunction<Double> expected =
        logScale ->
            lives
                * IntStream.range(0, 1000)
                    .mapToDouble(index -> watch.lastLook().applyAsDouble((index + 0.5) / 1000))
                    .map(last -> -Math.expm1(-Math.pow(last / Math.exp(logScale), shape)))
                    .average()
                    .orElseThrow();
    double logScale =
        new BracketingNthOrderBrentSolver(1e-10, 5)
            .solve(200, candidate -> expected.applyAsDouble(candidate) - failures, 0, 40);
    return new Design(watch, lives, failures, shape, Math.exp(logScale));
  }

  List<Life> draw(RandomGenerator random) {
    return Stream.generate(() -> life(random)).limit(lives).toList();
  }

  private Life life(RandomGenerator random) {
    double end = quantile(random.nextDouble());
    double last = watch.lastLook().applyAsDouble(1 - random.nextDouble());
    return end <= last ? watch.eye().of(Math.max(end, 1e-9), last) : Life.outlived(last);
  }

  /** In hours. */
  double quantile(double share) {
    return scale * Math.pow(-Math.log1p(-share), 1 / shape);
  }

  double survivalAt(double hours) {
    return Math.exp(-Math.pow(hours / scale, shape));
  }

  /** The mean of lives cut off at the horizon, in hours, by Simpson's rule. */
  double restrictedMean(double horizon) {
    int steps = 2000;
    double sum = 1 + survivalAt(horizon);
    for (int step = 1; step < steps; step++) {
      sum += (step % 2 == 0 ? 2 : 4) * survivalAt(horizon * step / steps);
    }
    return sum * horizon / steps / 3;
  }

  /** All but the shape. */
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%d lives, %.0f failures, %s", lives, failures, watch.name());
  }
}
