package leadline.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Shares that grow with age: steps with their limits as uprights, and a fitted curve with its
 * limits as dashed edges. Ages beyond all records are hatched.
 *
 * @param steps may be empty
 * @param curve may be empty
 * @param lastAge the greatest age of which a record tells
 */
public record CurveChart(
    String id,
    String title,
    String description,
    Measure ages,
    Measure shares,
    List<Point> steps,
    List<Point> curve,
    double lastAge) {

  private static final int WIDTH = 720;
  private static final int HEIGHT = 380;
  private static final double LEFT = 64;
  private static final double RIGHT = 692;
  private static final double TOP = 40;
  private static final double BOTTOM = 320;

  public CurveChart {
    steps = List.copyOf(steps);
    curve = List.copyOf(curve);
  }

  /**
   * A share by an age.
   *
   * @param upper empty where open
   */
  public record Point(
      double age, double share, OptionalDouble lower, OptionalDouble upper, String inWords) {}

  public Drawing drawing() {
    Pen pen = new Pen();
    Scale across = Scale.upTo(points().mapToDouble(Point::age).max().orElse(lastAge), LEFT, RIGHT);
    Scale up = Scale.upTo(greatestShare(), BOTTOM, TOP);
    axes(pen, across, up);
    noData(pen, across);
    curve(pen, across, up);
    steps(pen, across, up);
    legend(pen);
    return new Drawing(id, title, description, WIDTH, HEIGHT, pen.marks());
  }

  private Stream<Point> points() {
    return Stream.concat(steps.stream(), curve.stream());
  }

  private double greatestShare() {
    return Math.min(1, points().mapToDouble(p -> p.upper().orElse(1)).max().orElse(1));
  }

  private void axes(Pen pen, Scale across, Scale up) {
    for (double tick : across.ticks()) {
      pen.line("grid", across.at(tick), TOP, across.at(tick), BOTTOM, "");
      pen.words("tick", across.at(tick), BOTTOM + 18, "middle", ages.inWords().apply(tick));
    }
    for (double tick : up.ticks()) {
      pen.line("grid", LEFT, up.at(tick), RIGHT, up.at(tick), "");
      pen.words("tick", LEFT - 8, up.at(tick) + 4, "end", shares.inWords().apply(tick));
    }
    pen.line("axis", LEFT, BOTTOM, RIGHT, BOTTOM, "");
    pen.line("axis", LEFT, TOP, LEFT, BOTTOM, "");
    pen.words("axis-name", (LEFT + RIGHT) / 2, BOTTOM + 42, "middle", ages.name());
    pen.words("axis-name", LEFT - 50, TOP - 24, "start", shares.name());
  }

  private void noData(Pen pen, Scale across) {
    double from = across.at(lastAge);
    if (from < RIGHT) {
      String title = "No data beyond " + ages.inWords().apply(lastAge);
      pen.box("no-data-area", from, TOP, RIGHT, BOTTOM, title);
      pen.path("hatch", new Hatching(from, TOP, RIGHT, BOTTOM).path(), title);
      pen.line("no-data-edge", from, TOP, from, BOTTOM, title);
      pen.words("no-data", RIGHT, TOP - 8, "end", "no data");
    }
  }

  private void curve(Pen pen, Scale across, Scale up) {
    if (curve.isEmpty()) {
      return;
    }
    pen.path("band-edge", along(across, up, Edge.LOWER), "lower 95 % limit of the fitted curve");
    pen.path("band-edge", along(across, up, Edge.UPPER), "upper 95 % limit of the fitted curve");
    pen.path("fit", along(across, up, Edge.MIDDLE), "the fitted curve");
    curve.forEach(
        point ->
            pen.diamond("spot", across.at(point.age()), up.at(point.share()), 3, point.inWords()));
  }

  private enum Edge {
    LOWER,
    MIDDLE,
    UPPER;

    Optional<Double> of(Point point) {
      return switch (this) {
        case LOWER -> point.lower().stream().boxed().findFirst();
        case MIDDLE -> Optional.of(point.share());
        case UPPER -> Optional.of(point.upper().orElse(1));
      };
    }
  }

  private String along(Scale across, Scale up, Edge edge) {
    return curve.stream()
        .flatMap(
            point ->
                edge.of(point).stream()
                    .map(share -> Pen.at(across.at(point.age())) + " " + Pen.at(up.at(share))))
        .collect(Collectors.joining("L", "M" + Pen.at(LEFT) + " " + Pen.at(BOTTOM) + "L", ""));
  }

  private void steps(Pen pen, Scale across, Scale up) {
    if (steps.isEmpty()) {
      return;
    }
    StringBuilder path = new StringBuilder("M" + Pen.at(LEFT) + " " + Pen.at(BOTTOM));
    for (Point point : steps) {
      path.append("H").append(Pen.at(across.at(point.age())));
      path.append("V").append(Pen.at(up.at(point.share())));
    }
    pen.path("steps", path.toString(), "the share by the openings alone");
    steps.forEach(point -> upright(pen, across.at(point.age()), up, point));
  }

  private static void upright(Pen pen, double x, Scale up, Point point) {
    double top = up.at(point.upper().orElse(1));
    double bottom = up.at(point.lower().orElse(0));
    pen.line("limits", x, top, x, bottom, point.inWords());
    pen.line("limits", x - 3, top, x + 3, top, point.inWords());
    pen.line("limits", x - 3, bottom, x + 3, bottom, point.inWords());
  }

  private void legend(Pen pen) {
    double x = LEFT + 210;
    if (!steps.isEmpty()) {
      pen.line("steps", x, 12, x + 26, 12, "");
      pen.words("label", x + 32, 16, "start", "by the openings alone");
    }
    if (!curve.isEmpty()) {
      pen.line("fit", x + 190, 12, x + 216, 12, "");
      pen.line("band-edge", x + 190, 17, x + 216, 17, "");
      pen.words("label", x + 222, 16, "start", "fitted Weibull, its limits");
    }
  }
}
