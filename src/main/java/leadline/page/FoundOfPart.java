package leadline.page;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadline.chart.Interval;
import leadline.chart.Measure;
import leadline.chart.PanelChart;
import leadline.summary.EvidenceColumns;
import leadline.summary.FindingsByHours;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;
import leadline.summary.Verdict;

/**
 * The conditions of a part by its hours since new: a panel, and a column, for each.
 *
 * @param rows of {@code findings_by_hours}, of one stratum; the same conditions in every band
 */
record FoundOfPart(String component, String part, List<TableRow> rows) {

  private static final Measure SHARE =
      new Measure(
          "share of those opened; each panel has its own scale",
          share -> Math.round(share * 100) + " %");
  private static final Shown FIGURE =
      Shown.of(FindingsByHours.SPEC, FindingsByHours.FOUND_SHARE.estimate());

  Block chart() {
    return new Block.Chart(
        List.of(
            new PanelChart(
                    "found-" + part + "-chart",
                    title(),
                    "A panel for each condition in which this part was found, a row for each band of"
                        + " hours since new. A diamond is the share of the opened parts that were"
                        + " found so, the line its 95 % limits. The table below has the figures.",
                    SHARE,
                    bands().keySet().stream().map(HoursBand::inWords).toList(),
                    conditions().entrySet().stream().map(FoundOfPart::panel).toList())
                .drawing()),
        table());
  }

  private String title() {
    return "%s, %s: conditions found, by hours since new"
        .formatted(Named.sentence(component), Named.words(part));
  }

  private Map<String, List<TableRow>> bands() {
    return rows.stream()
        .collect(
            groupingBy(row -> row.need(SharedColumns.HOURS_BAND), LinkedHashMap::new, toList()));
  }

  private Map<String, List<TableRow>> conditions() {
    return rows.stream()
        .collect(groupingBy(row -> row.need(FindingsByHours.FOUND), LinkedHashMap::new, toList()));
  }

  private static PanelChart.Panel panel(Map.Entry<String, List<TableRow>> condition) {
    return new PanelChart.Panel(
        condition.getKey(), condition.getValue().stream().map(FoundOfPart::interval).toList());
  }

  private static Interval interval(TableRow row) {
    String inWords = figure(row) instanceof Cell.Estimate figure ? figure.text() : "none opened";
    return IntervalRows.interval(row, FindingsByHours.FOUND_SHARE, inWords);
  }

  private TableView table() {
    List<TableView.Head> heads = new ArrayList<>();
    shared().forEach(column -> heads.add(column.head()));
    conditions().keySet().forEach(word -> heads.add(head(word)));
    heads.add(Shown.of(FindingsByHours.SPEC, EvidenceColumns.VERDICT).head());
    return new TableView(
        "found-" + part + "-table",
        title() + "; the whole fleet since its records began",
        "",
        "../tables/" + FindingsByHours.SPEC.name() + ".csv",
        heads,
        List.of(
            new TableView.Rows(
                RowIds.NONE, bands().values().stream().map(FoundOfPart::cells).toList())));
  }

  /** What all rows of a band have in common. */
  private static List<Shown> shared() {
    return Tables.columns(
        FindingsByHours.SPEC,
        SharedColumns.HOURS_BAND,
        FindingsByHours.OVERHAULED,
        FindingsByHours.OPENED);
  }

  private static TableView.Head head(String condition) {
    TableView.Head ofAll = FIGURE.head();
    return new TableView.Head(
        ofAll.columns().replace("found", condition),
        condition + " (95\u00a0% limits)",
        ofAll.style(),
        "found " + condition + ", of opened");
  }

  private static List<Cell> cells(List<TableRow> band) {
    List<Cell> cells = new ArrayList<>();
    shared().forEach(column -> cells.add(column.cell(band.get(0))));
    band.forEach(row -> cells.add(figure(row)));
    cells.add(new Cell.Words(verdict(band)));
    return cells;
  }

  /** Many columns side by side need short figures. */
  private static Cell figure(TableRow row) {
    return FIGURE.cell(row) instanceof Cell.Estimate figure
        ? new Cell.Estimate(
            figure.text().replaceAll(" % to ", "\u2013").replace(" %)", ")"),
            figure.exact(),
            figure.lower(),
            figure.upper())
        : new Cell.None();
  }

  /** That of the openings where they are why; otherwise which conditions were found too seldom. */
  private static String verdict(List<TableRow> band) {
    Map<String, String> conditions =
        band.stream()
            .collect(
                groupingBy(
                    row -> row.need(EvidenceColumns.VERDICT),
                    LinkedHashMap::new,
                    java.util.stream.Collectors.mapping(
                        row -> row.need(FindingsByHours.FOUND), joining(", "))));
    String tooFew = Verdict.TOO_FEW.word();
    return conditions.size() == 1
        ? conditions.keySet().iterator().next()
        : tooFew + ": " + conditions.getOrDefault(tooFew, "");
  }
}
