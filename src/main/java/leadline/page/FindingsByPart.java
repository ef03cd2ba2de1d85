package leadline.page;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import leadline.chart.IntervalChart;
import leadline.chart.Measure;
import leadline.summary.EvidenceColumns;
import leadline.summary.PartFindings;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;
import leadline.summary.Window;

/** In what condition parts were found. */
final class FindingsByPart {

  private FindingsByPart() {}

  /** Of several components, over twelve months and since the start. */
  static TableView table(Tables tables, List<String> components) {
    return view(
        "findings-table",
        "Parts opened and found failed, the whole fleet",
        components.stream()
            .flatMap(
                component ->
                    Stream.of(Window.TWELVE_MONTHS, Window.SINCE_START)
                        .flatMap(
                            window ->
                                Subject.ofFleet(tables, component)
                                    .in(window)
                                    .rows(PartFindings.SPEC)
                                    .stream()))
            .toList(),
        FindingsByPart::ofDecision);
  }

  /** Of one component since the start. */
  static List<Block> chart(Tables tables, String component) {
    List<TableRow> rows = Subject.ofFleet(tables, component).rows(PartFindings.SPEC);
    IntervalChart chart =
        new IntervalChart(
            "findings-chart",
            Named.sentence(component) + ": parts found failed, of those opened",
            "A diamond is the share of opened parts that had lost their function, the line its"
                + " 95 % limits. The table below has the figures.",
            new Measure("found failed of opened", share -> Math.round(share * 100) + " %"),
            OptionalDouble.empty(),
            rows.stream()
                .map(
                    row ->
                        IntervalRows.of(
                            row.need(SharedColumns.PART), row, PartFindings.FAILED_SHARE))
                .toList());
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new Block.Chart(
                chart.drawings(),
                view(
                    "findings-table",
                    "Findings in figures, since records began",
                    rows,
                    row -> RowIds.NONE)));
  }

  private static String ofDecision(TableRow row) {
    return row.need(SharedColumns.WINDOW).equals(Window.SINCE_START.word())
        ? RowIds.part(row.need(SharedColumns.COMPONENT), row.need(SharedColumns.PART))
        : RowIds.NONE;
  }

  private static TableView view(
      String id, String caption, List<TableRow> rows, Function<TableRow, String> ids) {
    return Tables.view(
        id,
        caption,
        PartFindings.SPEC,
        rows,
        ids,
        Tables.columns(
            PartFindings.SPEC,
            SharedColumns.PART,
            SharedColumns.COMPONENT,
            SharedColumns.WINDOW,
            PartFindings.OVERHAULED,
            PartFindings.OPENED,
            PartFindings.OPENED_UNSTATED,
            PartFindings.FAILED,
            PartFindings.FAILED_SHARE.estimate(),
            PartFindings.REJECTED,
            PartFindings.RENEWED,
            EvidenceColumns.VERDICT));
  }
}
