package leadline.page;

import static leadline.page.Tables.having;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leadline.summary.EvidenceColumns;
import leadline.summary.PartLifetimes;
import leadline.summary.SharedColumns;
import leadline.summary.SpringSurvival;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.Verdict;

/**
 * The chance of a part to have failed by an age, at the ages at which a table states it for the
 * whole fleet.
 *
 * @param points by age; empty where no table does
 * @param refusal the verdict that stands in place of them; empty where there are points
 */
record FailureCurve(List<Point> points, String refusal) {

  private static final Pattern BY_AGE = Pattern.compile("failed_by_(\\d+)_h_share");
  private static final Point NEW = new Point(0, new Chance(0, 0, 0));

  /** By an age in hours since new. */
  record Point(double age, Chance chance) {}

  /** A chance and the limits between which it lies. */
  record Chance(double estimate, double lower, double upper) {}

  static FailureCurve of(Tables tables, String component, String part) {
    Subject fleet = Subject.ofFleet(tables, component);
    List<TableRow> lives = fleet.rows(PartLifetimes.SPEC, having(SharedColumns.PART, part));
    List<Point> spring =
        fleet
            .rows(
                SpringSurvival.SPEC,
                having(SharedColumns.PART, part),
                having(SpringSurvival.METHOD, SpringSurvival.Method.WEIBULL.word()),
                having(SpringSurvival.EXTRAPOLATED, "no"),
                having(EvidenceColumns.VERDICT, Verdict.OK.word()))
            .stream()
            .flatMap(FailureCurve::ofSpring)
            .toList();
    List<Point> points = spring.isEmpty() ? ofBest(lives) : spring;
    return points.isEmpty()
        ? new FailureCurve(List.of(), refusal(lives))
        : new FailureCurve(Stream.concat(Stream.of(NEW), points.stream()).toList(), "");
  }

  private static String refusal(List<TableRow> lives) {
    return lives.stream()
        .map(row -> row.need(EvidenceColumns.VERDICT))
        .filter(word -> !word.equals(Verdict.OK.word()))
        .findFirst()
        .orElse(Verdict.INSUFFICIENT.word())
        .replace('-', ' ');
  }

  private static Stream<Point> ofSpring(TableRow row) {
    return point(
        row.need(SpringSurvival.AGE),
        row.find(SpringSurvival.BROKEN_BY.estimate()),
        row.find(SpringSurvival.BROKEN_BY.lower()),
        row.find(SpringSurvival.BROKEN_BY.upper()));
  }

  private static List<Point> ofBest(List<TableRow> lives) {
    return lives.stream()
        .filter(row -> row.need(EvidenceColumns.VERDICT).equals(Verdict.OK.word()))
        .min(Comparator.comparing(row -> row.find(PartLifetimes.AIC_ABOVE_BEST).orElse(0.0)))
        .map(FailureCurve::ofLife)
        .orElse(List.of());
  }

  private static List<Point> ofLife(TableRow row) {
    List<Point> points = new ArrayList<>();
    List<String> extrapolated = List.of(row.need(PartLifetimes.EXTRAPOLATED).split(" "));
    for (TableColumn<?> column : PartLifetimes.SPEC.columns()) {
      Matcher named = BY_AGE.matcher(column.name());
      if (named.matches() && !extrapolated.contains(column.name())) {
        point(
                Double.parseDouble(named.group(1)),
                number(row, column.name()),
                number(row, column.name() + "_lo95"),
                number(row, column.name() + "_hi95"))
            .forEach(points::add);
      }
    }
    points.sort(Comparator.comparing(Point::age));
    return points;
  }

  private static Optional<Double> number(TableRow row, String name) {
    return PartLifetimes.SPEC.columns().stream()
        .filter(column -> column.name().equals(name))
        .findFirst()
        .flatMap(column -> row.find(column))
        .map(Double.class::cast);
  }

  private static Stream<Point> point(
      double age, Optional<Double> estimate, Optional<Double> lower, Optional<Double> upper) {
    return estimate.stream()
        .map(value -> new Point(age, new Chance(value, lower.orElse(0.0), upper.orElse(1.0))));
  }

  /** The greatest age of which the points speak; 0 without any. */
  double longest() {
    return points.isEmpty() ? 0 : points.get(points.size() - 1).age();
  }

  /**
   * The chance to have failed by an age, of a piece that still worked at an earlier one; none where
   * either lies beyond all points. Between points the estimate is drawn straight, and the limits
   * are the lower one of the point before and the upper one of the point after. Of a piece known to
   * have worked, they are the farthest that the limits at both ages allow.
   */
  Optional<Chance> by(double age, double workedAt) {
    return at(age).flatMap(by -> at(Math.min(workedAt, age)).map(before -> since(by, before)));
  }

  private static Chance since(Chance by, Chance before) {
    double lower = left(by.lower(), before.upper());
    double upper = left(by.upper(), before.lower());
    double estimate = left(by.estimate(), before.estimate());
    return new Chance(estimate, Math.min(lower, estimate), Math.max(upper, estimate));
  }

  /** Of those that had not failed before, those that fail by then. */
  private static double left(double by, double before) {
    return before >= 1 ? 1 : Math.max(0, (by - before) / (1 - before));
  }

  private Optional<Chance> at(double age) {
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      if (age <= to.age()) {
        double share = (age - from.age()) / (to.age() - from.age());
        return Optional.of(
            new Chance(
                from.chance().estimate()
                    + share * (to.chance().estimate() - from.chance().estimate()),
                age == to.age() ? to.chance().lower() : from.chance().lower(),
                age == from.age() ? from.chance().upper() : to.chance().upper()));
      }
    }
    return Optional.empty();
  }
}
