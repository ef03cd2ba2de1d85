package leadline.page;

import static leadline.page.Tables.having;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadline.chart.CurveChart;
import leadline.chart.IntervalChart;
import leadline.chart.Measure;
import leadline.publish.Numbers;
import leadline.summary.EvidenceColumns;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.SpringSurvival;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/** What the fleet found of one spring: by hours band, and broken by age. */
record SpringFigures(Tables tables, String component, String spring) {

  private static final Measure SHARE_OF_OPENED =
      new Measure(
          "broken of opened, and of all if the unopened were sound or broken",
          SpringFigures::percent);
  private static final Measure AGE = new Measure("hours since new", Numbers::wholeHours);
  private static final Measure SHARE =
      new Measure("springs broken by that age", SpringFigures::percent);

  private static String percent(double share) {
    return Math.round(share * 100) + " %";
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    List<TableRow> bands = bands();
    if (!bands.isEmpty()) {
      blocks.add(new Block.Chart(bandChart(bands).drawings(), bandTable(bands)));
    }
    List<TableRow> ages = survival();
    if (ages.stream().anyMatch(row -> row.find(SpringSurvival.BROKEN_BY.estimate()).isPresent())) {
      blocks.add(new Block.Chart(List.of(curve(ages).drawing()), ageTable(ages)));
    } else {
      blocks.add(new Block.Prose(refused(ages)));
    }
    return blocks;
  }

  private String refused(List<TableRow> ages) {
    return ages.stream()
        .findFirst()
        .map(
            row ->
                "There is no curve of "
                    + Named.words(spring)
                    + " broken by age: "
                    + Verdicts.of(row)
                    + ".")
        .orElse("There is no curve of " + Named.words(spring) + " broken by age.");
  }

  private List<TableRow> bands() {
    return rows(SpringBreakage.SPEC);
  }

  private List<TableRow> survival() {
    return rows(SpringSurvival.SPEC);
  }

  private List<TableRow> rows(TableSpec spec) {
    return Subject.ofFleet(tables, component).rows(spec, having(SharedColumns.PART, spring));
  }

  private IntervalChart bandChart(List<TableRow> bands) {
    return new IntervalChart(
        id("bands"),
        "%s, %s: found broken of those opened, by hours since new"
            .formatted(Named.sentence(component), Named.words(spring)),
        "A diamond is the share of opened springs that were broken, the line its 95 % limits. The"
            + " pale bar reaches from the share of all overhauled springs if every unopened one"
            + " were sound to the share if every one were broken. The table below has the figures.",
        SHARE_OF_OPENED,
        OptionalDouble.empty(),
        bands.stream().map(SpringFigures::band).toList());
  }

  private static IntervalChart.Row band(TableRow row) {
    return IntervalRows.of(
        HoursBand.inWords(row.need(SharedColumns.HOURS_BAND)),
        row,
        SpringBreakage.BROKEN_SHARE,
        row.find(SpringBreakage.SHARE_IF_UNOPENED_SOUND),
        row.find(SpringBreakage.SHARE_IF_UNOPENED_BROKEN));
  }

  private TableView bandTable(List<TableRow> bands) {
    return Tables.view(
        id("bands-table"),
        "%s, %s by hours since new; the whole fleet since its records began"
            .formatted(Named.sentence(component), Named.words(spring)),
        SpringBreakage.SPEC,
        bands,
        Tables.columns(
            SpringBreakage.SPEC,
            SharedColumns.HOURS_BAND,
            SpringBreakage.OVERHAULED,
            SpringBreakage.OPENED,
            SpringBreakage.BROKEN,
            SpringBreakage.BROKEN_SHARE.estimate(),
            SpringBreakage.SHARE_IF_UNOPENED_SOUND,
            SpringBreakage.SHARE_IF_UNOPENED_BROKEN,
            EvidenceColumns.VERDICT));
  }

  private CurveChart curve(List<TableRow> ages) {
    return new CurveChart(
        id("curve"),
        "%s, %s: share broken by age".formatted(Named.sentence(component), Named.words(spring)),
        "Steps are the share by the openings alone, with uprights for its 95 % limits; the smooth"
            + " line is a Weibull distribution fitted to the same lives, between dashed 95 %"
            + " limits. Ages at which no spring was seen are hatched. The table below has the"
            + " figures.",
        AGE,
        SHARE,
        points(ages, SpringSurvival.Method.NPMLE),
        points(ages, SpringSurvival.Method.WEIBULL),
        lastAge(ages));
  }

  private static List<CurveChart.Point> points(List<TableRow> ages, SpringSurvival.Method method) {
    return ages.stream()
        .filter(row -> row.need(SpringSurvival.METHOD).equals(method.word()))
        .flatMap(row -> point(row).stream())
        .toList();
  }

  private static Optional<CurveChart.Point> point(TableRow row) {
    return row.find(SpringSurvival.BROKEN_BY.estimate())
        .map(
            share ->
                new CurveChart.Point(
                    row.need(SpringSurvival.AGE),
                    share,
                    IntervalRows.number(row.find(SpringSurvival.BROKEN_BY.lower())),
                    IntervalRows.number(row.find(SpringSurvival.BROKEN_BY.upper())),
                    Numbers.hours(row.need(SpringSurvival.AGE))
                        + ": "
                        + IntervalRows.inWords(row, SpringSurvival.BROKEN_BY)));
  }

  /** The last age on the grid that is not marked as extrapolated. */
  private static double lastAge(List<TableRow> ages) {
    return ages.stream()
        .filter(row -> row.need(SpringSurvival.EXTRAPOLATED).equals("no"))
        .mapToDouble(row -> row.need(SpringSurvival.AGE))
        .max()
        .orElse(0);
  }

  private TableView ageTable(List<TableRow> ages) {
    return Tables.view(
        id("curve-table"),
        "%s, %s broken by age; the vessels that open it as a routine"
            .formatted(Named.sentence(component), Named.words(spring)),
        SpringSurvival.SPEC,
        ages,
        Tables.columns(
            SpringSurvival.SPEC,
            SpringSurvival.AGE,
            SpringSurvival.METHOD,
            SpringSurvival.BROKEN_BY.estimate(),
            SpringSurvival.LIMITS_BY,
            SpringSurvival.FAILURES,
            SpringSurvival.OPENINGS,
            SpringSurvival.EXTRAPOLATED,
            EvidenceColumns.VERDICT));
  }

  private String id(String what) {
    return spring + "-" + what;
  }
}
