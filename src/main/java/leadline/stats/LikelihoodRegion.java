package leadline.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import leadline.stats.ProfileLikelihood.Side;

/**
 * All pairs of shape and offset that are likely enough, and the extremes over them of a quantity
 * that always grows, or always falls, with the offset: at the ends of the offsets at one of the
 * shapes. For quantities whose equal values lie on curves, on which the likelihood may have several
 * peaks. Source: Meeker and Escobar 1998, Statistical Methods for Reliability Data, section 8.3.
 */
final class LikelihoodRegion {

  /** Steps of log shape from the peak to either end of the region. */
  private static final int STEPS = 8;

  /** From the log shape of the peak, where the region has no end: all but 0, or infinite. */
  private static final double FAR = 9;

  /** Of the likelihood, at the ends of the shapes. */
  private static final double ROUNDING = 1e-6;

  /** Of the step before: a quantity that tends to a value takes ever smaller ones. */
  private static final double STILL_GOING = 0.9;

  /** On the scale without ends, for a step in log shape of about 1. */
  private static final double LONG_STEP = 0.5;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final double LAST_WIDTH = 1e-9;

  /** The offsets likely enough at one shape, and the likeliest among them. */
  private record Section(double shape, Expansion top, double highest, double least, double most) {

    /** Of the likeliest, at a shape not far from this. */
    double highestNear(double otherShape) {
      return highest - top.byBoth() / top.byOffsetTwice() * (otherShape - shape);
    }
  }

  private final LikelihoodSurface surface;
  private final double height;
  private final List<Section> sections = new ArrayList<>();
  private final Set<Side> open = EnumSet.noneOf(Side.class);

  LikelihoodRegion(LikelihoodSurface surface, Peak peak, double standardErrors) {
    this.surface = surface;
    this.height = peak.expansion().value() - standardErrors * standardErrors / 2;
    Section middle = section(peak.shape(), peak.offset());
    sections.add(middle);
    ProfileLikelihood shapes =
        new ProfileLikelihood(surface, new ShapeChart(ShapeChart.Power.SHAPE), peak);
    for (Side side : Side.values()) {
      double end = side.signed(shapes.limit(side, standardErrors) - Math.log(peak.shape()));
      double way = Math.min(FAR, end);
      if (end > FAR) {
        open.add(side);
      }
      Section last = middle;
      for (int step = 1; step <= STEPS; step++) {
        double shape = peak.shape() * Math.exp(side.signed(way * step / STEPS));
        Optional<Section> next = sectionAfter(last, shape);
        if (next.isEmpty()) {
          break;
        }
        last = next.get();
        sections.add(last);
      }
    }
    sections.sort(Comparator.comparingDouble(Section::shape));
  }

  /** The first that is likely enough, from three guesses at its likeliest offset. */
  private Optional<Section> sectionAfter(Section last, double shape) {
    return DoubleStream.of(
            last.highestNear(shape), last.highest() * last.shape() / shape, last.highest())
        .mapToObj(start -> section(shape, start))
        .filter(
            section ->
                section.top().value() - height > -ROUNDING && section.top().byOffsetTwice() < 0)
        .findFirst();
  }

  private Section section(double shape, double start) {
    OffsetSection section = new OffsetSection(surface, shape);
    double highest = section.highest(start);
    Expansion top = section.at(highest);
    double above = top.value() - height;
    if (!(above > 0) || !(top.byOffsetTwice() < 0)) {
      return new Section(shape, top, highest, highest, highest);
    }
    double away = Math.sqrt(-2 * above / top.byOffsetTwice());
    return new Section(
        shape,
        top,
        highest,
        section.fallen(highest, -away, height),
        section.fallen(highest, away, height));
  }

  /**
   * Of the quantity, on the chart's scale; infinite where it is at a shape of the region.
   *
   * @param profile of the chart, which solves for the extreme from the nearest of the sections
   */
  double extreme(Chart chart, ProfileLikelihood profile, Side side) {
    int best = 0;
    double farthest = Double.NEGATIVE_INFINITY;
    for (int index = 0; index < sections.size(); index++) {
      double here = farthest(sections.get(index), chart, side);
      if (here > farthest) {
        farthest = here;
        best = index;
      }
    }
    if (Double.isInfinite(farthest) || goesOn(best, chart, side)) {
      return side.signed(Double.POSITIVE_INFINITY);
    }
    double atBest = farthest;
    int nearest = best;
    return solved(sections.get(best), chart, profile, side)
        .filter(solved -> side.signed(solved) >= atBest)
        .orElseGet(() -> side.signed(Math.max(atBest, refined(chart, side, nearest))));
  }

  /**
   * Whether the quantity is farthest at an open end of the shapes, and there no nearer to a stop.
   */
  private boolean goesOn(int best, Chart chart, Side side) {
    int inwards = best == 0 ? 1 : -1;
    if (!open.contains(best == 0 ? Side.BELOW : Side.ABOVE)
        || (best != 0 && best != sections.size() - 1)
        || sections.size() < 3) {
      return false;
    }
    double last = farthest(sections.get(best), chart, side);
    double before = farthest(sections.get(best + inwards), chart, side);
    double first = farthest(sections.get(best + 2 * inwards), chart, side);
    return last - before > Math.max(LONG_STEP, STILL_GOING * (before - first));
  }

  private Optional<Double> solved(
      Section start, Chart chart, ProfileLikelihood profile, Side side) {
    double least = chart.coordinate(start.shape(), start.least());
    double most = chart.coordinate(start.shape(), start.most());
    boolean isMost = side.signed(most) > side.signed(least);
    double offset = isMost ? start.most() : start.least();
    return profile.solved(side, height, isMost ? most : least, chart.along(start.shape(), offset));
  }

  /** By golden sections. */
  private double refined(Chart chart, Side side, int best) {
    Section from = sections.get(Math.max(0, best - 1));
    Section to = sections.get(Math.min(sections.size() - 1, best + 1));
    double low = Math.log(from.shape());
    double high = Math.log(to.shape());
    double farthest = Double.NEGATIVE_INFINITY;
    double one = high - GOLDEN * (high - low);
    double other = low + GOLDEN * (high - low);
    double atOne = farthest(one, from, chart, side);
    double atOther = farthest(other, from, chart, side);
    while (high - low > LAST_WIDTH) {
      farthest = Math.max(farthest, Math.max(atOne, atOther));
      if (atOne > atOther) {
        high = other;
        other = one;
        atOther = atOne;
        one = high - GOLDEN * (high - low);
        atOne = farthest(one, from, chart, side);
      } else {
        low = one;
        one = other;
        atOne = atOther;
        other = low + GOLDEN * (high - low);
        atOther = farthest(other, from, chart, side);
      }
    }
    return farthest;
  }

  private double farthest(double logShape, Section near, Chart chart, Side side) {
    double shape = Math.exp(logShape);
    return farthest(section(shape, near.highestNear(shape)), chart, side);
  }

  /** Where an offset is all but infinite, the quantity may have no digit left. */
  private static double numberOrLeast(double coordinate) {
    return Double.isNaN(coordinate) ? Double.NEGATIVE_INFINITY : coordinate;
  }

  /** Infinite at a shape where the quantity is. */
  private static double farthest(Section section, Chart chart, Side side) {
    return chart.isFiniteAt(section.shape())
        ? Math.max(
            numberOrLeast(side.signed(chart.coordinate(section.shape(), section.least()))),
            numberOrLeast(side.signed(chart.coordinate(section.shape(), section.most()))))
        : side.signed(Double.POSITIVE_INFINITY);
  }
}
