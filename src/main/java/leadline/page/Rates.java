package leadline.page;

import static leadline.page.Tables.having;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import leadline.chart.IntervalChart;
import leadline.chart.Measure;
import leadline.fleet.Reason;
import leadline.publish.Numbers;
import leadline.summary.ComponentRates;
import leadline.summary.EvidenceColumns;
import leadline.summary.Level;
import leadline.summary.OverhaulIntervals;
import leadline.summary.SharedColumns;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.Window;

/** How often components break down, and how long they run between overhauls. */
final class Rates {

  private static final Measure PER_MILLION =
      new Measure("breakdowns per million running hours", Rates::tick);
  private static final Tables.Having<String> BREAKDOWN =
      having(ComponentRates.ENDPOINT, Reason.BREAKDOWN.word());

  private static final List<Reason> ENDPOINTS = List.of(Reason.BREAKDOWN, Reason.CONDITION);

  private Rates() {}

  private static String tick(double rate) {
    return rate == Math.rint(rate) ? Numbers.wholeHours(rate) : Numbers.rate(rate);
  }

  /** Breakdown rates of all components of the fleet. */
  static Block fleet(Tables tables, List<String> components) {
    List<TableRow> sinceStart =
        components.stream()
            .flatMap(
                component ->
                    Subject.ofFleet(tables, component)
                        .rows(ComponentRates.SPEC, BREAKDOWN)
                        .stream())
            .toList();
    List<TableRow> all =
        components.stream()
            .flatMap(
                component ->
                    ENDPOINTS.stream().flatMap(endpoint -> ofFleet(tables, component, endpoint)))
            .toList();
    IntervalChart chart =
        new IntervalChart(
            "rates-chart",
            "Breakdown rates of the fleet since its records began",
            "A diamond is the rate, the line its 95 % limits. The table below has the figures.",
            PER_MILLION,
            OptionalDouble.empty(),
            sinceStart.stream()
                .map(
                    row ->
                        IntervalRows.of(
                            row.need(SharedColumns.COMPONENT), row, ComponentRates.RATE))
                .toList());
    return new Block.Chart(
        chart.drawings(),
        rateTable(
            "Rates of the whole fleet",
            all,
            Rates::ofDecision,
            SharedColumns.COMPONENT,
            SharedColumns.WINDOW));
  }

  private static Stream<TableRow> ofFleet(Tables tables, String component, Reason endpoint) {
    return Stream.of(Window.MONTH, Window.TWELVE_MONTHS, Window.SINCE_START)
        .flatMap(
            window ->
                Subject.ofFleet(tables, component)
                    .in(window)
                    .rows(ComponentRates.SPEC, having(ComponentRates.ENDPOINT, endpoint.word()))
                    .stream());
  }

  private static String ofDecision(TableRow row) {
    return row.need(ComponentRates.ENDPOINT).equals(Reason.BREAKDOWN.word())
            && !row.need(SharedColumns.WINDOW).equals(Window.SINCE_START.word())
        ? RowIds.breakdowns(row.need(SharedColumns.COMPONENT))
        : RowIds.NONE;
  }

  /** Where the breakdowns of the month were; empty where there were none. */
  static List<Block> ofTheMonth(Tables tables, List<String> components) {
    List<TableRow> rows =
        components.stream()
            .flatMap(
                component ->
                    Subject.ofFleet(tables, component)
                        .at(Level.VESSEL)
                        .in(Window.MONTH)
                        .rows(ComponentRates.SPEC, BREAKDOWN)
                        .stream())
            .filter(row -> row.need(EvidenceColumns.EVENTS) > 0)
            .toList();
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new Block.Table(
                Tables.view(
                    "broken-down-table",
                    "Breakdowns of the month, by vessel",
                    ComponentRates.SPEC,
                    rows,
                    row -> RowIds.brokenDown(row.need(SharedColumns.COMPONENT)),
                    Tables.columns(
                        ComponentRates.SPEC,
                        SharedColumns.STRATUM,
                        SharedColumns.COMPONENT,
                        SharedColumns.WINDOW,
                        ComponentRates.ENDPOINT,
                        EvidenceColumns.EVENTS,
                        EvidenceColumns.EXPOSURE,
                        ComponentRates.RATE.estimate(),
                        EvidenceColumns.VERDICT))));
  }

  /** Breakdown rates of each vessel beside the fleet's. */
  static Block vessels(Tables tables, String component) {
    Subject fleet = Subject.ofFleet(tables, component);
    List<TableRow> ofFleet = fleet.rows(ComponentRates.SPEC, BREAKDOWN);
    List<TableRow> models = fleet.at(Level.MODEL).rows(ComponentRates.SPEC, BREAKDOWN);
    List<TableRow> vessels = fleet.at(Level.VESSEL).rows(ComponentRates.SPEC, BREAKDOWN);
    List<TableRow> rows = Stream.of(ofFleet, models, vessels).flatMap(List::stream).toList();
    IntervalChart chart =
        new IntervalChart(
            "rates-chart",
            Named.sentence(component) + ": breakdown rates of models and vessels",
            "A diamond is the rate, the line its 95 % limits, the dashed upright the fleet's rate."
                + " Vessels are in the order of their names: limits that overlap tell no vessel"
                + " from another, and a vessel that reports better looks worse. The table below has"
                + " the figures.",
            PER_MILLION,
            ofFleet.stream()
                .flatMap(row -> row.find(ComponentRates.RATE.estimate()).stream())
                .mapToDouble(rate -> rate)
                .findFirst(),
            rows.stream().map(Rates::row).toList());
    return new Block.Chart(
        chart.drawings(),
        rateTable(
            "Breakdown rates in figures, since records began",
            rows,
            row -> RowIds.NONE,
            SharedColumns.STRATUM,
            SharedColumns.LEVEL));
  }

  private static IntervalChart.Row row(TableRow row) {
    String label =
        row.need(SharedColumns.LEVEL).equals(Level.FLEET.word())
            ? "whole fleet"
            : row.need(SharedColumns.STRATUM);
    return IntervalRows.of(label, row, ComponentRates.RATE);
  }

  private static TableView rateTable(
      String caption,
      List<TableRow> rows,
      Function<TableRow, String> ids,
      TableColumn<?> first,
      TableColumn<?> second) {
    return Tables.view(
        "rates-table",
        caption,
        ComponentRates.SPEC,
        rows,
        ids,
        Tables.columns(
            ComponentRates.SPEC,
            first,
            second,
            ComponentRates.ENDPOINT,
            EvidenceColumns.EVENTS,
            EvidenceColumns.EXPOSURE,
            ComponentRates.RATE.estimate(),
            EvidenceColumns.INSPECTED,
            EvidenceColumns.ELIGIBLE,
            EvidenceColumns.REPAIRED_HOURS_SHARE,
            EvidenceColumns.VERDICT));
  }

  /** How long components run between overhauls, of the levels. */
  static TableView intervals(Tables tables, List<String> components, Level... levels) {
    List<TableRow> rows =
        components.stream()
            .flatMap(
                component ->
                    Stream.of(levels)
                        .flatMap(
                            level ->
                                Subject.ofFleet(tables, component)
                                    .at(level)
                                    .rows(OverhaulIntervals.SPEC)
                                    .stream()))
            .toList();
    return Tables.view(
        "intervals-table",
        "Hours between overhauls as practised, since records began",
        OverhaulIntervals.SPEC,
        rows,
        Tables.columns(
            OverhaulIntervals.SPEC,
            SharedColumns.COMPONENT,
            SharedColumns.STRATUM,
            OverhaulIntervals.CLOCK,
            OverhaulIntervals.COMPLETED,
            OverhaulIntervals.RUNNING,
            OverhaulIntervals.KM_MEDIAN.estimate(),
            OverhaulIntervals.RESTRICTED_MEAN.estimate(),
            OverhaulIntervals.RESTRICTED_TO,
            OverhaulIntervals.NAIVE_MEAN,
            OverhaulIntervals.POLICY_INTERVAL,
            OverhaulIntervals.BEYOND_INTERVAL_SHARE,
            EvidenceColumns.VERDICT));
  }
}
