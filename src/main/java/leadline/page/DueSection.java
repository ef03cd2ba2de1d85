package leadline.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.summary.TableRow;

/** What is overdue and falls due soon, and each vessel's month. */
final class DueSection {

  private static final Set<String> PRESSING = Set.of("overdue", "due-soon");

  private DueSection() {}

  /** Empty where the run has neither table. */
  static Optional<Section> of(Tables tables) {
    List<Block> blocks = new ArrayList<>();
    NamedTable.find(tables, "due_list").ifPresent(due -> addDue(blocks, due));
    NamedTable.find(tables, "fleet_month")
        .ifPresent(
            month ->
                blocks.add(
                    new Block.Table(
                        month.view(
                            "fleet-month",
                            "Each vessel's month",
                            "vessel",
                            "vessel_name",
                            "main_engine_month_h",
                            "main_engine_year_h",
                            "overhauls",
                            "breakdowns",
                            "springs_overhauled",
                            "springs_opened",
                            "positions",
                            "overdue",
                            "due_soon",
                            "due_unknown",
                            "questions",
                            "days_since_record",
                            "data_grade"))));
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("due", "Due and overdue", blocks));
  }

  private static void addDue(List<Block> blocks, NamedTable due) {
    NamedTable pressing = due.where(row -> PRESSING.contains(due.text(row, "standing")));
    List<TableRow> sorted =
        pressing.rows().stream()
            .sorted(
                Comparator.comparing((TableRow row) -> due.text(row, "standing"))
                    .reversed()
                    .thenComparing(
                        row ->
                            due.value(row, "remaining_h")
                                .map(Double.class::cast)
                                .orElse(Double.MAX_VALUE)))
            .toList();
    blocks.add(
        new Block.Prose(
            "Hours are counted from the last overhaul on record. A date is a forecast from the"
                + " machine's own recent running, never a permission; limits of maker, class and"
                + " flag prevail."));
    blocks.add(
        new Block.Table(
            new NamedTable(due.spec(), sorted)
                .view(
                    "due-list",
                    "Positions overdue, then those due soon",
                    "vessel",
                    "machine",
                    "component",
                    "position",
                    "item",
                    "standing",
                    "since",
                    "hours_since_overhaul_h",
                    "limit_h",
                    "limit_by",
                    "remaining_h",
                    "due_early",
                    "due_on",
                    "due_late",
                    "shut_part",
                    "opened_on",
                    "shut_h")));
  }
}
