package leadline.page;

import static java.util.stream.Collectors.groupingBy;
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

  /** The limits of fewer reach over most of the scale, and press all others together. */
  static final long ENOUGH_OPENED = 5;

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
                        + " found so, the line its 95 % limits; where fewer than five were opened"
                        + " there is their number. The table below has the figures.",
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
    long opened = row.need(FindingsByHours.OPENED);
    return figure(row) instanceof Cell.Estimate figure && opened >= ENOUGH_OPENED
        ? IntervalRows.interval(row, FindingsByHours.FOUND_SHARE, figure.text())
        : Interval.none(opened == 0 ? "none opened" : opened + " opened");
  }

  private TableView table() {
    List<TableView.Head> heads = new ArrayList<>();
    shared().forEach(column -> heads.add(column.head()));
    conditions().keySet().forEach(word -> heads.add(head(word)));
    heads.add(Shown.of(FindingsByHours.SPEC, EvidenceColumns.VERDICT).head());
    return new TableView(
        "found-" + part + "-table",
        title() + "; the whole fleet since its records began",
        "Shares of those opened, with 95\u00a0% limits; * marks what was found fewer than five times.",
        "../tables/" + FindingsByHours.SPEC.name() + ".csv",
        TableView.Sheet.DENSE,
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
        condition,
        ofAll.style(),
        "found so, of opened");
  }

  private static List<Cell> cells(List<TableRow> band) {
    List<Cell> cells = new ArrayList<>();
    shared().forEach(column -> cells.add(column.cell(band.get(0))));
    band.forEach(row -> cells.add(figure(row)));
    cells.add(new Cell.Words(verdict(band)));
    return cells;
  }

  /** Many columns side by side need short figures: limits in whole percents. */
  private static Cell figure(TableRow row) {
    return FIGURE.cell(row) instanceof Cell.Estimate figure
        ? new Cell.Estimate(
            figure.figure(),
            "(%s\u2013%s)%s"
                .formatted(
                    wholePercent(row.need(FindingsByHours.FOUND_SHARE.lower())),
                    wholePercent(row.need(FindingsByHours.FOUND_SHARE.upper())),
                    mark(row)),
            figure.exact(),
            figure.lower(),
            figure.upper())
        : new Cell.None();
  }

  private static String wholePercent(double share) {
    return String.valueOf(Math.round(100 * share));
  }

  private static String mark(TableRow row) {
    return row.need(EvidenceColumns.VERDICT).equals(Verdict.TOO_FEW.word()) ? "*" : "";
  }

  /** The same for all conditions, or ok for those that were found often enough. */
  private static String verdict(List<TableRow> band) {
    List<String> verdicts =
        band.stream().map(row -> row.need(EvidenceColumns.VERDICT)).distinct().toList();
    return verdicts.size() == 1 ? verdicts.get(0) : "ok but for *";
  }
}
