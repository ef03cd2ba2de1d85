package leadline.stats;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * The search of a likelihood for its highest point, from a shape that the data suggest.
 *
 * @param shape to start from
 * @param offset to start from, at a shape
 */
record PeakSearch(LikelihoodSurface surface, double shape, DoubleUnaryOperator offset) {

  /** Shapes to start from, as multiples of the one that the data suggest. */
  private static final double[] STARTS = {1, 0.2, 4};

  /** The peak that the first start leads to, which is the highest where there is only one. */
  Optional<Peak> only() {
    return from(1).or(this::highest);
  }

  /** The highest peak that the starts lead to. */
  Optional<Peak> highest() {
    return DoubleStream.of(STARTS)
        .mapToObj(this::from)
        .flatMap(Optional::stream)
        .max(Comparator.comparingDouble(found -> found.expansion().value()));
  }

  private Optional<Peak> from(double factor) {
    double start = factor * shape;
    return Peak.near(surface, start, offset.applyAsDouble(start));
  }

  /** Whether the likelihood, highest over the offset at each shape, rises down to this shape. */
  boolean risesTowards(double noShape) {
    double last = Double.NEGATIVE_INFINITY;
    for (double lower = 8 * shape; lower > noShape; lower /= 2) {
      double best = new OffsetSection(surface, lower).highest(offset.applyAsDouble(lower));
      double value = surface.at(lower, best).value();
      if (!(value > last)) {
        return false;
      }
      last = value;
    }
    return true;
  }
}
