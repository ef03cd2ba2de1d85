package leadline.chart;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Estimates with their limits, one below the other. A row without an estimate says why in words.
 *
 * @param reference a figure to compare with, drawn through all rows; empty for none
 */
public record IntervalChart(
    String id,
    String title,
    String description,
    Measure measure,
    OptionalDouble reference,
    List<Row> rows) {

  private static final int WIDTH = 720;
  private static final double LEFT = 190;
  private static final double RIGHT = 500;
  private static final double ROW = 24;
  private static final double TOP = 14;
  private static final int MOST_ROWS = 34;
  private static final int LONGEST_LABEL = 26;

  public IntervalChart {
    rows = List.copyOf(rows);
  }

  /**
   * An estimate on a line of its own.
   *
   * @param least the least that it can be whatever is not known; empty where nothing is open
   * @param most the most that it can be
   */
  public record Row(String label, Interval interval, OptionalDouble least, OptionalDouble most) {

    private double greatest() {
      return DoubleStream.of(
              interval.estimate().orElse(0),
              interval.lower().orElse(0),
              interval.upper().orElse(0),
              most.orElse(0))
          .max()
          .orElse(0);
    }
  }

  /** All rows on one scale, in as many drawings as sheets of paper need. */
  public List<Drawing> drawings() {
    Scale scale = Scale.upTo(reach(), LEFT, RIGHT);
    int sheets = Math.max(1, (rows.size() + MOST_ROWS - 1) / MOST_ROWS);
    return IntStream.range(0, sheets).mapToObj(sheet -> drawing(scale, sheet, sheets)).toList();
  }

  private Drawing drawing(Scale scale, int sheet, int sheets) {
    List<Row> drawn =
        rows.subList(sheet * MOST_ROWS, Math.min(rows.size(), (sheet + 1) * MOST_ROWS));
    Pen pen = new Pen();
    double bottom = TOP + ROW * drawn.size();
    axis(pen, scale, bottom);
    reference.ifPresent(
        value -> pen.line("reference", scale.at(value), TOP, scale.at(value), bottom, "all"));
    double middle = TOP + ROW / 2;
    for (Row row : drawn) {
      draw(pen, scale, row, middle);
      middle += ROW;
    }
    return new Drawing(
        sheets == 1 ? id : id + "-" + (sheet + 1),
        sheets == 1 ? title : "%s (%d of %d)".formatted(title, sheet + 1, sheets),
        description,
        WIDTH,
        (int) Math.ceil(bottom) + 44,
        pen.marks());
  }

  private double reach() {
    double greatest = rows.stream().mapToDouble(Row::greatest).max().orElse(0);
    return greatest > 0 ? Interval.reach(rows.stream().map(Row::interval).toList(), greatest) : 1;
  }

  private void axis(Pen pen, Scale scale, double bottom) {
    for (double tick : scale.ticks()) {
      pen.line("grid", scale.at(tick), TOP, scale.at(tick), bottom, "");
      pen.words("tick", scale.at(tick), bottom + 16, "middle", measure.inWords().apply(tick));
    }
    pen.line("axis", LEFT, bottom, RIGHT, bottom, "");
    pen.words("axis-name", (LEFT + RIGHT) / 2, bottom + 36, "middle", measure.name());
  }

  private static void draw(Pen pen, Scale scale, Row row, double middle) {
    String title = row.label() + ": " + row.interval().inWords();
    pen.words("label", LEFT - 8, middle + 4, "end", shortened(row.label()), row.label());
    if (row.least().isPresent() && row.most().isPresent()) {
      pen.box(
          "bounds",
          scale.at(row.least().getAsDouble()),
          middle - 7,
          scale.at(row.most().getAsDouble()),
          middle + 7,
          title);
    }
    row.interval().draw(pen, scale, middle, 5, title);
    pen.words("figure", RIGHT + 14, middle + 4, "start", row.interval().inWords());
  }

  private static String shortened(String label) {
    return label.codePointCount(0, label.length()) <= LONGEST_LABEL
        ? label
        : label.substring(0, label.offsetByCodePoints(0, LONGEST_LABEL - 1)) + "…";
  }
}
