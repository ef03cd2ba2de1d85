package leadline.chart;

import java.util.List;
import java.util.Locale;

/** Counts of several kinds, end to end in one bar a row; kinds differ by fill, not by colour. */
public record StackChart(
    String id, String title, String description, String counted, List<Kind> kinds, List<Bar> bars) {

  private static final int WIDTH = 720;
  private static final double LEFT = 150;
  private static final double RIGHT = 640;
  private static final double ROW = 24;
  private static final double TOP = 52;
  private static final int KINDS_ON_A_LINE = 3;
  private static final double KIND_WIDTH = 190;

  public StackChart {
    kinds = List.copyOf(kinds);
    bars = List.copyOf(bars);
  }

  /**
   * What is counted in a piece of a bar.
   *
   * @param fill {@code black}, {@code dark}, {@code white}, {@code light} or {@code hatched}
   */
  public record Kind(String fill, String name) {}

  /**
   * A bar.
   *
   * @param counts in the order of the kinds
   * @param total in words
   */
  public record Bar(String label, List<Long> counts, String total) {
    public Bar {
      counts = List.copyOf(counts);
    }

    private double sum() {
      return counts.stream().mapToDouble(Long::doubleValue).sum();
    }
  }

  public Drawing drawing() {
    Pen pen = new Pen();
    legend(pen);
    Scale scale = Scale.upTo(bars.stream().mapToDouble(Bar::sum).max().orElse(1), LEFT, RIGHT);
    double bottom = TOP + ROW * bars.size();
    for (double tick : scale.ticks()) {
      pen.line("grid", scale.at(tick), TOP, scale.at(tick), bottom, "");
      pen.words(
          "tick", scale.at(tick), bottom + 16, "middle", String.format(Locale.ROOT, "%,.0f", tick));
    }
    pen.line("axis", LEFT, bottom, RIGHT, bottom, "");
    pen.words("axis-name", (LEFT + RIGHT) / 2, bottom + 36, "middle", counted);
    double top = TOP;
    for (Bar bar : bars) {
      draw(pen, scale, bar, top);
      top += ROW;
    }
    return new Drawing(id, title, description, WIDTH, (int) Math.ceil(bottom) + 44, pen.marks());
  }

  private void draw(Pen pen, Scale scale, Bar bar, double top) {
    pen.words("label", LEFT - 8, top + 16, "end", bar.label());
    double before = 0;
    for (int i = 0; i < kinds.size(); i++) {
      long count = bar.counts().get(i);
      if (count > 0) {
        String title = "%s: %s %,d".formatted(bar.label(), kinds.get(i).name(), count);
        piece(
            pen,
            kinds.get(i),
            new Hatching(scale.at(before), top + 4, scale.at(before + count), top + 20),
            title);
      }
      before += count;
    }
    pen.words("figure", scale.at(before) + 6, top + 16, "start", bar.total());
  }

  private static void piece(Pen pen, Kind kind, Hatching area, String title) {
    boolean hatched = kind.fill().equals("hatched");
    pen.box(
        "piece-" + (hatched ? "white" : kind.fill()),
        area.left(),
        area.top(),
        area.right(),
        area.bottom(),
        title);
    if (hatched) {
      pen.path("hatch", area.path(), title);
    }
  }

  private void legend(Pen pen) {
    for (int i = 0; i < kinds.size(); i++) {
      int line = i / KINDS_ON_A_LINE;
      double x = LEFT + KIND_WIDTH * (i - line * KINDS_ON_A_LINE);
      double y = 6 + 20.0 * line;
      piece(pen, kinds.get(i), new Hatching(x, y, x + 20, y + 13), "");
      pen.words("tick", x + 26, y + 11, "start", kinds.get(i).name());
    }
  }
}
