package leadline.chart;

import java.util.List;

/**
 * Estimates with their limits in panels side by side, all with the same rows and each on a scale of
 * its own. Where there is no estimate, words say why.
 *
 * @param rows what the rows are, from the top
 */
public record PanelChart(
    String id,
    String title,
    String description,
    Measure measure,
    List<String> rows,
    List<Panel> panels) {

  private static final int WIDTH = 720;
  private static final double LEFT = 112;
  private static final int ON_A_LINE = 7;
  private static final double APART = 18;
  private static final double ROW = 17;
  private static final double HEAD = 26;
  private static final double FOOT = 44;

  public PanelChart {
    rows = List.copyOf(rows);
    panels = List.copyOf(panels);
  }

  /**
   * A panel.
   *
   * @param intervals one for each row
   */
  public record Panel(String name, List<Interval> intervals) {
    public Panel {
      intervals = List.copyOf(intervals);
    }

    private Scale scale(double from, double to) {
      double greatest =
          intervals.stream()
              .mapToDouble(
                  interval -> Math.max(interval.estimate().orElse(0), interval.upper().orElse(0)))
              .max()
              .orElse(0);
      return Scale.upTo(greatest > 0 ? Interval.reach(intervals, greatest) : 1, from, to);
    }
  }

  public Drawing drawing() {
    Pen pen = new Pen();
    double top = 0;
    for (int first = 0; first < panels.size(); first += ON_A_LINE) {
      drawLine(pen, panels.subList(first, Math.min(first + ON_A_LINE, panels.size())), top);
      top += HEAD + ROW * rows.size() + FOOT;
    }
    return new Drawing(id, title, description, WIDTH, (int) Math.ceil(top), pen.marks());
  }

  private void drawLine(Pen pen, List<Panel> line, double top) {
    double width = (WIDTH - LEFT) / ON_A_LINE;
    for (int row = 0; row < rows.size(); row++) {
      pen.words("label", LEFT - 10, middle(top, row) + 4, "end", rows.get(row));
    }
    for (int place = 0; place < line.size(); place++) {
      double from = LEFT + place * width;
      draw(pen, line.get(place), line.get(place).scale(from, from + width - APART), top);
    }
    double bottom = top + HEAD + ROW * rows.size();
    pen.words("axis-name", LEFT, bottom + 32, "start", measure.name());
  }

  private void draw(Pen pen, Panel panel, Scale scale, double top) {
    double bottom = top + HEAD + ROW * rows.size();
    pen.words("panel", scale.from(), top + 18, "start", panel.name());
    scale
        .ticks()
        .forEach(tick -> pen.line("grid", scale.at(tick), top + HEAD, scale.at(tick), bottom, ""));
    pen.line("axis", scale.from(), bottom, scale.to(), bottom, "");
    pen.words("tick", scale.from(), bottom + 15, "start", measure.inWords().apply(0));
    pen.words("tick", scale.to(), bottom + 15, "end", measure.inWords().apply(scale.end()));
    for (int row = 0; row < rows.size(); row++) {
      Interval interval = panel.intervals().get(row);
      String title = "%s, %s: %s".formatted(panel.name(), rows.get(row), interval.inWords());
      interval.draw(pen, scale, middle(top, row), 4, title);
      if (interval.estimate().isEmpty()) {
        pen.words("tick", scale.from() + 4, middle(top, row) + 4, "start", interval.inWords());
      }
    }
  }

  private static double middle(double top, int row) {
    return top + HEAD + ROW * (row + 0.5);
  }
}
