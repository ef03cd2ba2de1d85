package leadline.chart;

import java.util.Collection;
import java.util.OptionalDouble;

/**
 * An estimate between its limits: a diamond on a line with ends. A limit that is open or beyond the
 * axis ends in an arrow.
 *
 * @param estimate empty where there is none
 * @param lower empty where there is no limit
 * @param upper empty where it is open or there is no limit
 * @param inWords the figure, or why there is none
 */
public record Interval(
    OptionalDouble estimate, OptionalDouble lower, OptionalDouble upper, String inWords) {

  private static final double GREATEST_OF_MEDIAN = 4;
  private static final double END = 5;
  private static final double ARROW = 6;

  /** Nothing to draw. */
  public static Interval none(String why) {
    return new Interval(
        OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), why);
  }

  /** How far an axis reaches: wide limits of a few must not press all others against zero. */
  static double reach(Collection<Interval> intervals, double greatest) {
    double usual =
        GREATEST_OF_MEDIAN
            * intervals.stream()
                .mapToDouble(interval -> interval.upper.orElse(0))
                .filter(upper -> upper > 0)
                .sorted()
                .skip((intervals.size() - 1) / 2)
                .findFirst()
                .orElse(greatest);
    double greatestEstimate =
        intervals.stream().mapToDouble(interval -> interval.estimate.orElse(0)).max().orElse(0);
    return Math.min(greatest, Math.max(usual, greatestEstimate));
  }

  void draw(Pen pen, Scale scale, double middle, double size, String title) {
    if (lower.isPresent()) {
      drawLimits(pen, scale, middle, title);
    }
    estimate.ifPresent(value -> pen.diamond("estimate", scale.at(value), middle, size, title));
  }

  private void drawLimits(Pen pen, Scale scale, double middle, String title) {
    double from = scale.at(lower.getAsDouble());
    double to = scale.at(upper.orElse(scale.end()));
    pen.line("limits", from, middle, to, middle, title);
    pen.line("limits", from, middle - END, from, middle + END, title);
    if (upper.isPresent() && upper.getAsDouble() <= scale.end()) {
      pen.line("limits", to, middle - END, to, middle + END, title);
    } else {
      pen.path(
          "limits",
          "M%s %sL%s %sL%s %s"
              .formatted(
                  Pen.at(to - ARROW),
                  Pen.at(middle - END),
                  Pen.at(to),
                  Pen.at(middle),
                  Pen.at(to - ARROW),
                  Pen.at(middle + END)),
          title + " (beyond the axis)");
    }
  }
}
