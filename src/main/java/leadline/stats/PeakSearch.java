package leadline.stats;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import leadline.stats.FitOutcome.Reason;

/**
 * The search of a likelihood for its highest point, from a shape that the data suggest.
 *
 * @param shape to start from
 * @param offset to start from, at a shape
 */
record PeakSearch(LikelihoodSurface surface, double shape, DoubleUnaryOperator offset) {

  /** Shapes to start from, as multiples of the one that the data suggest. */
  private static final double[] STARTS = {1, 0.2, 4};

  /** A fall by so little is none, but the rise to a limit already reached. */
  private static final double ROUNDING = 1e-5;

  private static final double NO_SHAPE = 1e-4;

  /** The peak that the first start leads to, which is the highest where there is only one. */
  Optional<Peak> only() {
    return from(1).filter(peak -> !peak.isLevel()).or(this::highest);
  }

  /** The highest peak that the starts lead to; empty if a slope to a limit is higher. */
  Optional<Peak> highest() {
    return highestOrLevel().filter(peak -> !peak.isLevel());
  }

  private Optional<Peak> highestOrLevel() {
    return DoubleStream.of(STARTS)
        .mapToObj(this::from)
        .flatMap(Optional::stream)
        .max(Comparator.comparingDouble(found -> found.expansion().value()));
  }

  private Optional<Peak> from(double factor) {
    double start = factor * shape;
    return Peak.near(surface, start, offset.applyAsDouble(start));
  }

  /** Why there is no highest peak. */
  Reason reasonAgainst() {
    return highestOrLevel().isPresent() || doesNotFallToNoShape()
        ? Reason.NO_RISE_WITH_AGE
        : Reason.NOT_FOUND;
  }

  /** The likelihood highest over the offset, from a great shape to all but 0. */
  private boolean doesNotFallToNoShape() {
    double last = Double.NEGATIVE_INFINITY;
    double lastOffset = 0;
    for (double lower = 8 * shape; lower > NO_SHAPE; lower /= 2) {
      OffsetSection section = new OffsetSection(surface, lower);
      double one = section.highest(offset.applyAsDouble(lower));
      // On a slope to a limit, shape times offset is what stays.
      double other = section.highest(2 * lastOffset);
      lastOffset = section.at(one).value() > section.at(other).value() ? one : other;
      double value = section.at(lastOffset).value();
      if (!(value > last - ROUNDING)) {
        return false;
      }
      last = value;
    }
    return true;
  }
}
