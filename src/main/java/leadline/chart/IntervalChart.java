package leadline.chart;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Estimates with their limits, one below the other: a diamond on a line with ends. A row without an
 * estimate says why in words; a limit that is open or beyond the axis ends in an arrow.
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
  private static final double GREATEST_OF_MEDIAN = 4;

  public IntervalChart {
    rows = List.copyOf(rows);
  }

  /**
   * An estimate on a line of its own.
   *
   * @param estimate empty where there is none
   * @param lower empty where there is no limit
   * @param upper empty where it is open or there is no limit
   * @param least the least that it can be whatever is not known; empty where nothing is open
   * @param most the most that it can be
   * @param inWords the figure, or why there is none
   */
  public record Row(
      String label,
      OptionalDouble estimate,
      OptionalDouble lower,
      OptionalDouble upper,
      OptionalDouble least,
      OptionalDouble most,
      String inWords) {

    private DoubleStream numbers() {
      return DoubleStream.of(estimate.orElse(0), lower.orElse(0), upper.orElse(0), most.orElse(0));
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

  /** Wide limits of a few rows must not press all others against zero. */
  private double reach() {
    double greatestEstimate =
        rows.stream().mapToDouble(row -> row.estimate().orElse(0)).max().orElse(0);
    double[] uppers =
        rows.stream().flatMapToDouble(Row::numbers).filter(x -> x > 0).sorted().toArray();
    if (uppers.length == 0) {
      return 1;
    }
    double greatest = uppers[uppers.length - 1];
    double usual =
        GREATEST_OF_MEDIAN
            * rows.stream()
                .mapToDouble(row -> row.upper().orElse(0))
                .filter(upper -> upper > 0)
                .sorted()
                .skip((rows.size() - 1) / 2)
                .findFirst()
                .orElse(greatest);
    return Math.min(greatest, Math.max(usual, greatestEstimate));
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
    String title = row.label() + ": " + row.inWords();
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
    if (row.lower().isPresent()) {
      limits(pen, scale, row, middle, title);
    }
    row.estimate().ifPresent(value -> pen.diamond("estimate", scale.at(value), middle, 5, title));
    pen.words("figure", RIGHT + 14, middle + 4, "start", row.inWords());
  }

  private static void limits(Pen pen, Scale scale, Row row, double middle, String title) {
    double from = scale.at(row.lower().getAsDouble());
    double to = scale.at(row.upper().orElse(scale.end()));
    pen.line("limits", from, middle, to, middle, title);
    pen.line("limits", from, middle - 5, from, middle + 5, title);
    if (row.upper().isPresent() && row.upper().getAsDouble() <= scale.end()) {
      pen.line("limits", to, middle - 5, to, middle + 5, title);
    } else {
      pen.path(
          "limits",
          "M%s %sL%s %sL%s %s"
              .formatted(
                  Pen.at(to - 6),
                  Pen.at(middle - 5),
                  Pen.at(to),
                  Pen.at(middle),
                  Pen.at(to - 6),
                  Pen.at(middle + 5)),
          title + " (beyond the axis)");
    }
  }

  private static String shortened(String label) {
    return label.codePointCount(0, label.length()) <= LONGEST_LABEL
        ? label
        : label.substring(0, label.offsetByCodePoints(0, LONGEST_LABEL - 1)) + "…";
  }
}
