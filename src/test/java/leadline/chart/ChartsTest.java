package leadline.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ChartsTest {

  private static final Measure SHARE = new Measure("share", share -> share + "");
  private static final Measure AGE = new Measure("hours", hours -> hours + "");

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static OptionalDouble some(double number) {
    return OptionalDouble.of(number);
  }

  private static IntervalChart.Row row(
      String label, OptionalDouble estimate, OptionalDouble lower, OptionalDouble upper) {
    return new IntervalChart.Row(
        label, new Interval(estimate, lower, upper, label + " in words"), NONE, NONE);
  }

  private static IntervalChart chart(IntervalChart.Row... rows) {
    return new IntervalChart("id", "title", "words", SHARE, NONE, List.of(rows));
  }

  private static List<String> paths(Drawing drawing, String style) {
    return strokes(drawing, style).map(Mark.Stroke::path).toList();
  }

  private static Stream<Mark.Stroke> strokes(Drawing drawing, String style) {
    return drawing.marks().stream()
        .filter(Mark.Stroke.class::isInstance)
        .map(Mark.Stroke.class::cast)
        .filter(stroke -> stroke.style().equals(style));
  }

  private static List<String> words(Drawing drawing, String style) {
    return drawing.marks().stream()
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .filter(words -> words.style().equals(style))
        .map(Mark.Words::text)
        .toList();
  }

  /** The axis ends at 1, 190 to 500 pixels; the row's middle is at 26. */
  @Test
  void anEstimateStandsOnItsLimits() {
    Drawing drawing = chart(row("a", some(0.5), some(0.2), some(1))).drawings().get(0);
    assertEquals(
        List.of("M252 26L500 26", "M252 21L252 31", "M500 21L500 31"), paths(drawing, "limits"));
    assertEquals(List.of("M340 26L345 21L350 26L345 31Z"), paths(drawing, "estimate"));
    assertEquals(List.of("a in words"), words(drawing, "figure"));
    assertEquals(List.of("share"), words(drawing, "axis-name"));
  }

  @Test
  void anOpenLimitEndsInAnArrowAtTheEdge() {
    Drawing drawing =
        chart(row("a", some(0.5), some(0.2), NONE), row("b", some(1), NONE, NONE))
            .drawings()
            .get(0);
    assertEquals(
        List.of("M252 26L500 26", "M252 21L252 31", "M494 21L500 26L494 31"),
        paths(drawing, "limits"));
  }

  @Test
  void aRowWithoutAnEstimateHasWordsOnly() {
    Drawing drawing = chart(row("a", NONE, NONE, NONE)).drawings().get(0);
    assertEquals(List.of(), paths(drawing, "limits"));
    assertEquals(List.of(), paths(drawing, "estimate"));
    assertEquals(List.of("a in words"), words(drawing, "figure"));
  }

  @Test
  void oneWideLimitDoesNotPressTheOthersTogether() {
    IntervalChart.Row narrow = row("a", some(1), some(0.5), some(2));
    Drawing drawing =
        chart(narrow, narrow, narrow, row("b", some(3), some(1), some(400))).drawings().get(0);
    assertTrue(
        words(drawing, "tick").stream().mapToDouble(Double::parseDouble).max().orElse(0) < 20);
    assertTrue(
        strokes(drawing, "limits")
            .anyMatch(stroke -> stroke.title().endsWith("(beyond the axis)")));
  }

  @Test
  void everyDrawnFigureHasATitle() {
    Drawing drawing = chart(row("a", some(0.5), some(0.2), some(1))).drawings().get(0);
    for (String style : List.of("limits", "estimate")) {
      assertTrue(
          strokes(drawing, style).allMatch(stroke -> stroke.title().equals("a: a in words")),
          style);
    }
  }

  @Test
  void aLongNameIsCutOnTheChartAndWholeInItsTitle() {
    String name = "n".repeat(10_000);
    Mark.Words label =
        chart(row(name, some(1), NONE, NONE)).drawings().get(0).marks().stream()
            .filter(Mark.Words.class::isInstance)
            .map(Mark.Words.class::cast)
            .filter(words -> words.style().equals("label"))
            .findFirst()
            .orElseThrow();
    assertEquals("n".repeat(25) + "…", label.text());
    assertEquals(name, label.title());
  }

  @Test
  void aLongChartIsDrawnOnSeveralSheetsWithOneScale() {
    IntervalChart.Row[] rows = new IntervalChart.Row[70];
    Arrays.setAll(rows, i -> row("v" + i, some(i), some(i), some(i)));
    List<Drawing> sheets = chart(rows).drawings();
    assertEquals(List.of("id-1", "id-2", "id-3"), sheets.stream().map(Drawing::id).toList());
    assertEquals("title (2 of 3)", sheets.get(1).title());
    assertEquals(70, sheets.stream().mapToInt(sheet -> words(sheet, "figure").size()).sum());
    assertEquals(words(sheets.get(0), "tick"), words(sheets.get(2), "tick"));
  }

  private static CurveChart.Point point(double age, double share) {
    return new CurveChart.Point(age, share, some(share / 2), some(1), age + " h");
  }

  private static CurveChart curves(
      List<CurveChart.Point> steps, List<CurveChart.Point> curve, double last) {
    return new CurveChart("id", "title", "words", AGE, SHARE, steps, curve, last);
  }

  /** Ages 0 to 10,000 lie from 64 to 692 pixels, shares 0 to 1 from 320 up to 40. */
  @Test
  void stepsRiseAtTheirAgesAndCarryUprights() {
    Drawing drawing =
        curves(List.of(point(5_000, 0.5), point(10_000, 1)), List.of(), 10_000).drawing();
    assertEquals("M64 320H378V180H692V40", paths(drawing, "steps").get(0));
    assertEquals("M378 40L378 250", paths(drawing, "limits").get(0));
    assertEquals(6, paths(drawing, "limits").size());
    assertEquals(List.of(), paths(drawing, "fit"));
  }

  @Test
  void aFittedCurveHasBothItsLimits() {
    Drawing drawing = curves(List.of(), List.of(point(10_000, 0.5)), 10_000).drawing();
    assertEquals("M64 320L692 180", paths(drawing, "fit").get(0));
    assertEquals(
        List.of("M64 320L692 250", "M64 320L692 40"), paths(drawing, "band-edge").subList(0, 2));
  }

  @Test
  void agesWithoutDataAreHatchedAndSaySo() {
    Drawing drawing = curves(List.of(), List.of(point(10_000, 0.5)), 5_000).drawing();
    assertTrue(paths(drawing, "no-data-area").get(0).startsWith("M378 40H692V320"));
    assertFalse(paths(drawing, "hatch").get(0).isEmpty());
    assertTrue(words(drawing, "no-data").contains("no data"));
    assertEquals(
        List.of(), paths(curves(List.of(), List.of(point(10_000, 1)), 10_000).drawing(), "hatch"));
  }

  @Test
  void hatchesStayWithinTheirBox() {
    String path = new Hatching(100, 10, 150, 40).path();
    for (String line : path.substring(1).split("M", -1)) {
      for (String end : line.split("L", -1)) {
        String[] xy = end.split(" ", -1);
        double x = Double.parseDouble(xy[0]);
        double y = Double.parseDouble(xy[1]);
        assertTrue(x >= 100 && x <= 150 && y >= 10 && y <= 40, end);
      }
    }
    assertEquals("", new Hatching(100, 10, 60, 40).path());
  }

  @Test
  void piecesOfABarLieEndToEndAndEmptyOnesAreLeftOut() {
    StackChart chart =
        new StackChart(
            "id",
            "title",
            "words",
            "lives",
            List.of(
                new StackChart.Kind("black", "failed"),
                new StackChart.Kind("white", "working"),
                new StackChart.Kind("hatched", "left out")),
            List.of(new StackChart.Bar("nozzle", List.of(2L, 0L, 8L), "10")));
    Drawing drawing = chart.drawing();
    assertEquals("M150 56H248V72H150Z", paths(drawing, "piece-black").get(1));
    assertTrue(paths(drawing, "piece-white").contains("M248 56H640V72H248Z"));
    assertEquals(
        List.of("nozzle: failed 2"),
        strokes(drawing, "piece-black").map(Mark.Stroke::title).filter(t -> !t.isEmpty()).toList());
    assertEquals(List.of("10"), words(drawing, "figure"));
  }

  private static PanelChart.Panel panel(String name, double upper) {
    return new PanelChart.Panel(
        name,
        List.of(
            new Interval(some(upper / 2), some(0), some(upper), name + " of few"),
            Interval.none("none opened")));
  }

  private static PanelChart panels(PanelChart.Panel... panels) {
    return new PanelChart(
        "id", "title", "words", SHARE, List.of("few hours", "many hours"), List.of(panels));
  }

  /** Seven on a line: the first two begin at 112 and at 112 + 608 / 7 pixels. */
  @Test
  void panelsStandSideBySideEachOnItsOwnScale() {
    Drawing drawing = panels(panel("sound", 1), panel("worn", 0.1)).drawing();
    List<String> middles =
        paths(drawing, "limits").stream().filter(p -> p.contains(" 34.5L")).toList();
    assertEquals(List.of("M112 34.5L180.9 34.5", "M198.9 34.5L267.7 34.5"), middles);
    assertEquals(
        List.of("0.0", "1.0", "0.0", "0.1"),
        words(drawing, "tick").stream().filter(t -> !t.startsWith("none")).toList());
    assertEquals(List.of("sound", "worn"), words(drawing, "panel"));
    assertEquals(List.of("few hours", "many hours"), words(drawing, "label"));
  }

  @Test
  void aPanelsRowWithoutAnEstimateSaysWhy() {
    Drawing drawing = panels(panel("sound", 1)).drawing();
    assertEquals(1, words(drawing, "tick").stream().filter("none opened"::equals).count());
    assertEquals(1, strokes(drawing, "estimate").count());
    assertTrue(
        strokes(drawing, "limits")
            .allMatch(stroke -> stroke.title().equals("sound, few hours: sound of few")));
  }

  @Test
  void morePanelsThanFitStandOnAnotherLine() {
    PanelChart.Panel[] eight = new PanelChart.Panel[8];
    Arrays.setAll(eight, i -> panel("p" + i, 1));
    Drawing drawing = panels(eight).drawing();
    assertEquals(2 * panels(eight[0]).drawing().height(), drawing.height());
    assertEquals(4, words(drawing, "label").size());
    assertEquals(8, words(drawing, "panel").size());
  }
}
