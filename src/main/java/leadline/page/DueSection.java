package leadline.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import leadline.publish.VesselFile;
import leadline.summary.DueList;
import leadline.summary.TableRow;

/**
 * What is overdue and falls due soon, and each vessel's month.
 *
 * @param components in the order of the catalogue
 */
record DueSection(Tables tables, List<String> components) {

  private static final Set<String> PRESSING = Set.of("overdue", "due-soon");

  /** Empty where the run has neither table. */
  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    NamedTable.find(tables, "due_list").ifPresent(due -> addDue(blocks, due));
    NamedTable.find(tables, "fleet_month").ifPresent(month -> addMonth(blocks, month));
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("due", "Due and overdue", blocks));
  }

  private void addDue(List<Block> blocks, NamedTable due) {
    blocks.add(
        new Block.Prose(
            "Hours are counted from the last overhaul on record. A date is a forecast from the"
                + " machine's own recent running, never a permission; limits of maker, class and"
                + " flag prevail. A vessel's name leads to its briefing, the sheets for the batch"
                + " that it overhauls next."));
    NamedTable.find(tables, "fleet_month")
        .flatMap(NothingDue::sentence)
        .map(Block.Prose::new)
        .ifPresent(blocks::add);
    NamedTable pressing = due.where(row -> PRESSING.contains(due.text(row, "standing")));
    List<TableRow> sorted =
        pressing.rows().stream()
            .sorted(
                Comparator.comparing((TableRow row) -> due.text(row, "standing"))
                    .reversed()
                    .thenComparing(row -> components.indexOf(due.text(row, "component")))
                    .thenComparing(
                        row ->
                            due.value(row, "remaining_h")
                                .map(Double.class::cast)
                                .orElse(Double.MAX_VALUE)))
            .toList();
    blocks.add(
        new Block.Table(
            Tables.view(
                "due-list",
                "Positions overdue, then those due soon, by component",
                due.spec(),
                sorted,
                row ->
                    due.text(row, "standing").equals("overdue")
                        ? RowIds.overdue(due.text(row, "component"))
                        : RowIds.NONE,
                withBriefings(
                    due,
                    "machine",
                    "component",
                    "position",
                    "item",
                    "standing",
                    "hours_since_overhaul_h",
                    "limit_h",
                    "remaining_h",
                    "due_early",
                    "due_on",
                    "due_late",
                    "shut_part",
                    "opened_on",
                    "shut_h",
                    "since",
                    "limit_by"))));
  }

  private void addMonth(List<Block> blocks, NamedTable month) {
    blocks.add(
        new Block.Table(
            Tables.view(
                "fleet-month",
                "Each vessel's month",
                month.spec(),
                month.rows(),
                row -> RowIds.vessel(month.text(row, "vessel")),
                withBriefings(
                    month,
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
  }

  /** The vessel, which leads to its briefing where it has one, and then these columns. */
  private List<Shown> withBriefings(NamedTable table, String... columns) {
    Set<String> vessels = NextBatch.byVessel(tables.rows(DueList.SPEC)).keySet();
    Function<TableRow, Optional<String>> briefing =
        row ->
            Optional.of(table.text(row, "vessel"))
                .filter(vessels::contains)
                .map(vessel -> "../briefing/" + VesselFile.name(vessel) + ".html");
    return Stream.<Shown>concat(
            table.shown("vessel").stream().map(vessel -> new Shown.Linked(vessel, briefing)),
            table.shown(columns).stream())
        .toList();
  }
}
