package leadline.page;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.publish.Numbers;

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
    NamedTable overdue = standing(ofComponent, "overdue");
    if (overdue.rows().isEmpty()) {
      return Optional.empty();
    }
    long vessels =
        overdue.rows().stream().map(row -> overdue.text(row, "vessel")).distinct().count();
    return Optional.of(
        new Block.Point(
            "%s: of %s %s are overdue, on %s; %s more due soon, %s with hours since overhaul unknown. Decide for each on port and day, or who may allow more hours."
                .formatted(
                    Named.sentence(component.name()),
                    Named.counted(ofComponent.rows().size(), "position"),
                    Numbers.count(overdue.rows().size()),
                    Named.counted(vessels, "vessel"),
                    Numbers.count(standing(ofComponent, "due-soon").rows().size()),
                    Numbers.count(standing(ofComponent, "unknown").rows().size())),
            "#due-list",
            "Positions overdue"));
  }

  private static NamedTable standing(NamedTable due, String word) {
    return due.where(row -> due.text(row, "standing").equals(word));
  }
}
