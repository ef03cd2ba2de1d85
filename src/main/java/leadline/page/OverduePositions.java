package leadline.page;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.publish.Numbers;
import leadline.summary.TableRow;

/** Positions beyond a limit: overhaul now, or ask whom the limit belongs to. */
final class OverduePositions implements Decision {

  @Override
  public String heading() {
    return "Overdue";
  }

  @Override
  public List<Block.Point> points(Tables tables, Catalogue catalogue) {
    return NamedTable.find(tables, "due_list").stream()
        .flatMap(
            due ->
                catalogue.components().stream()
                    .flatMap(component -> point(due, component).stream()))
        .toList();
  }

  private static Optional<Block.Point> point(NamedTable due, Component component) {
    NamedTable ofComponent = due.where(row -> due.text(row, "component").equals(component.name()));
    List<TableRow> overdue = standing(ofComponent, "overdue");
    return overdue.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Point(
                Named.sentence(component.name()) + ": " + sentence(ofComponent, overdue),
                List.of(
                    new Page.Link(
                        "#" + RowIds.overdue(component.name()),
                        Named.counted(overdue.size(), "position") + " overdue"))));
  }

  private static String sentence(NamedTable due, List<TableRow> overdue) {
    long vessels = overdue.stream().map(row -> due.text(row, "vessel")).distinct().count();
    return "%s of %s %s overdue, on %s%s%s%s. Decide %son port and day, or who may allow more hours."
        .formatted(
            Numbers.count(overdue.size()),
            Named.counted(due.rows().size(), "position"),
            overdue.size() == 1 ? "is" : "are",
            Named.counted(vessels, "vessel"),
            byMost(due, overdue),
            also(standing(due, "due-soon").size(), " more is due soon", " more are due soon"),
            also(
                standing(due, "unknown").size(),
                " has unknown hours since overhaul",
                " have unknown hours since overhaul"),
            overdue.size() == 1 ? "" : "for each ");
  }

  /** The one furthest beyond its limit in hours; nothing where none is. */
  private static String byMost(NamedTable due, List<TableRow> overdue) {
    return overdue.stream()
        .filter(row -> hours(due, row, "remaining_h") < 0)
        .min(Comparator.comparingDouble(row -> hours(due, row, "remaining_h")))
        .map(
            row ->
                "; furthest %s, %s %s, at %s, limit %s"
                    .formatted(
                        Named.data(due.text(row, "vessel")),
                        Named.data(due.text(row, "machine")),
                        due.text(row, "position"),
                        Numbers.hours(hours(due, row, "hours_since_overhaul_h")),
                        Numbers.hours(hours(due, row, "limit_h"))))
        .orElse("");
  }

  private static double hours(NamedTable due, TableRow row, String column) {
    return due.value(row, column).map(Double.class::cast).orElse(0.0);
  }

  private static String also(int count, String one, String more) {
    return count == 0 ? "" : "; " + Numbers.count(count) + (count == 1 ? one : more);
  }

  private static List<TableRow> standing(NamedTable due, String word) {
    return due.where(row -> due.text(row, "standing").equals(word)).rows();
  }
}
