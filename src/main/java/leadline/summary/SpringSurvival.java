package leadline.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import leadline.fleet.Written;
import leadline.quantity.RunningHours;

/** How many springs are broken by an age, by the openings alone and by a Weibull distribution. */
public final class SpringSurvival {

  /** How the share was estimated. */
  public enum Method implements Written {
    NPMLE,
    WEIBULL
  }

  public static final TableColumn<String> METHOD =
      TableColumn.key(
          "method",
          "npmle, from the openings alone, or weibull, a distribution fitted to the same lives");
  public static final TableColumn<Double> AGE =
      TableColumn.keyReal("age_h", "h", "hours since new of the spring");
  public static final EstimateColumns BROKEN_BY =
      EstimateColumns.of(
          "broken_by",
          "1",
          "share of springs broken by the age, were nothing else to end their service first; by"
              + " npmle, those broken between two openings count evenly over the hours between",
          "approximate, from limits_by:");
  public static final TableColumn<Double> BROKEN_BY_LEAST = edge("least", "surely");
  public static final TableColumn<Double> BROKEN_BY_MOST = edge("most", "perhaps");
  public static final TableColumn<String> LIMITS_BY =
      TableColumn.text(
          "limits_by", "where the limits come from: " + SharedColumns.words(LimitsBy.class));
  public static final TableColumn<Long> FAILURES =
      TableColumn.count("failures", "springs known to have broken, of known age");
  public static final TableColumn<Long> OPENINGS =
      TableColumn.count(
          "openings", "openings of the spring on the vessels whose springs the curve shows");
  public static final TableColumn<String> EXTRAPOLATED =
      TableColumn.text(
          "extrapolated", "yes where the age is beyond any at which a spring was seen, else no");

  public static final TableSpec SPEC =
      TableSpec.of(
          "spring_survival",
          "How many springs are broken by an age: by the openings alone, and by a Weibull"
              + " distribution.",
          SharedColumns.OF_PART,
          List.of(METHOD, AGE),
          BROKEN_BY.all(),
          List.of(BROKEN_BY_LEAST, BROKEN_BY_MOST, LIMITS_BY),
          LifeFigure.SHAPE.all(),
          LifeFigure.SCALE.all(),
          List.of(FAILURES, OPENINGS, EXTRAPOLATED),
          EvidenceColumns.ALL);

  private static final int STEPS_IN_AN_INTERVAL = 8;

  /** In policy intervals: how far a fitted curve is drawn. */
  private static final int INTERVALS_AHEAD = 2;

  private final LifeGroup group;
  private final RoutineLives lives;
  private final Verdict verdict;

  SpringSurvival(LifeGroup group, RoutineLives lives) {
    this.group = group;
    this.lives = lives;
    this.verdict = lives.verdict(group.subject().part(), group.policyInterval());
  }

  /**
   * By method and age: every eighth of the policy interval, and one row where there is no curve.
   */
  List<TableRow> rows() {
    List<TableRow> curves =
        switch (verdict) {
          case WRONG_CLOCK, INSUFFICIENT, SELECTIVE_OPENING -> List.of();
          case TOO_FEW -> byOpenings();
          case OK -> Stream.concat(byOpenings().stream(), byWeibull().stream()).toList();
        };
    return curves.isEmpty() ? List.of(withoutCurve()) : curves;
  }

  private TableRow withoutCurve() {
    return row(Method.NPMLE, group.policyInterval()).with(LIMITS_BY, LimitsBy.NONE.word()).build();
  }

  private List<TableRow> byOpenings() {
    List<RunningHours> ages = agesUpTo(lives.longestAge());
    return new BrokenByAge(lives)
        .at(ages).stream()
            .map(
                broken ->
                    row(Method.NPMLE, broken.age())
                        .with(BROKEN_BY, broken.share(), broken.limits())
                        .with(BROKEN_BY_LEAST, broken.edges().lower())
                        .with(BROKEN_BY_MOST, broken.edges().upper())
                        .with(LIMITS_BY, broken.limitsBy().word())
                        .build())
            .toList();
  }

  private List<TableRow> byWeibull() {
    List<RunningHours> ages =
        agesUpTo(lives.longestAge().max(group.policyInterval().times(INTERVALS_AHEAD)));
    List<LifeFigure> figures = new ArrayList<>(LifeFigure.PARAMETERS);
    ages.forEach(age -> figures.add(LifeFigure.failedBy(BROKEN_BY, age)));
    return new FittedLives(lives, figures)
        .with(FittedLives.WEIBULL).stream()
            .flatMap(
                fit ->
                    IntStream.range(0, ages.size())
                        .mapToObj(
                            index ->
                                row(
                                    ages.get(index),
                                    fit.figures().subList(0, LifeFigure.PARAMETERS.size()),
                                    fit.figures().get(LifeFigure.PARAMETERS.size() + index))))
            .toList();
  }

  private TableRow row(RunningHours age, List<HeadlineFigure> parameters, HeadlineFigure broken) {
    TableRow.Builder row =
        broken.in(row(Method.WEIBULL, age)).with(LIMITS_BY, broken.limitsBy().word());
    parameters.forEach(parameter -> parameter.in(row));
    return row.build();
  }

  private TableRow.Builder row(Method method, RunningHours age) {
    return group
        .row(SPEC, lives, verdict)
        .with(METHOD, method.word())
        .with(AGE, age.hours())
        .with(FAILURES, lives.total().failures())
        .with(OPENINGS, lives.total().openings().opened())
        .with(EXTRAPOLATED, age.isAbove(lives.longestAge()) ? "yes" : "no");
  }

  private List<RunningHours> agesUpTo(RunningHours last) {
    RunningHours step =
        RunningHours.ofTenths(group.policyInterval().tenths() / STEPS_IN_AN_INTERVAL);
    return LongStream.rangeClosed(1, last.tenths() / step.tenths()).mapToObj(step::times).toList();
  }

  private static TableColumn<Double> edge(String edge, String broken) {
    return TableColumn.real(
        "broken_by_" + edge,
        "1",
        broken
            + " broken by the age, by where in the hours between two openings springs broke; an edge"
            + " of the npmle curve, no confidence limit; empty for weibull");
  }
}
