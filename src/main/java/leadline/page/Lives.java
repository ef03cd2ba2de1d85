package leadline.page;

import static leadline.page.Tables.having;

import java.util.ArrayList;
import java.util.List;
import leadline.chart.StackChart;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.publish.Numbers;
import leadline.summary.EvidenceColumns;
import leadline.summary.PartLifetimes;
import leadline.summary.SharedColumns;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/** What the lives of a component's parts tell: how many ended how, and the fits to them. */
record Lives(Tables tables, Component component) {

  private static final TableSpec SPEC = PartLifetimes.SPEC;

  List<Block> blocks() {
    List<TableRow> all = Subject.ofFleet(tables, component.name()).rows(SPEC);
    List<TableRow> best = component.parts().stream().flatMap(part -> best(part).stream()).toList();
    if (best.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Block.Prose(
            "Few lives are seen to end. Most are cut short by the end of the records, a renewal of"
                + " a part that still worked, or an opening that nobody made; each tells only how"
                + " long the part surely lasted. Failures found at an opening began at some age"
                + " before it."),
        new Block.Chart(List.of(chart(best).drawing()), counts(best)),
        new Block.Table(fits(all)));
  }

  private List<TableRow> best(Part part) {
    return Subject.ofFleet(tables, component.name())
        .rows(SPEC, having(SharedColumns.PART, part.name()))
        .stream()
        .limit(1)
        .toList();
  }

  private StackChart chart(List<TableRow> rows) {
    return new StackChart(
        "lives-chart",
        Named.sentence(component.name()) + ": what is known of the lives of its parts",
        "For each part the lives on record: failed at a known age (black), failed between two ages"
            + " (dark), still working when last known (white), renewed while working (light), and"
            + " left out for want of an age, an opening or a routine (hatched). The table below has"
            + " the figures.",
        "lives on record",
        List.of(
            new StackChart.Kind("black", "failed, age known"),
            new StackChart.Kind("dark", "failed between two ages"),
            new StackChart.Kind("white", "worked when last known"),
            new StackChart.Kind("light", "renewed while working"),
            new StackChart.Kind("hatched", "left out")),
        rows.stream().map(Lives::bar).toList());
  }

  private static StackChart.Bar bar(TableRow row) {
    return new StackChart.Bar(
        row.need(SharedColumns.PART),
        List.of(
            row.need(PartLifetimes.EXACT),
            row.need(PartLifetimes.INTERVAL),
            row.need(PartLifetimes.RIGHT_CENSORED),
            row.need(PartLifetimes.REJECTED),
            row.need(PartLifetimes.UNVERIFIED)
                + row.need(PartLifetimes.WITHOUT_AGE)
                + row.need(PartLifetimes.SELECTIVE)),
        Numbers.count(row.need(PartLifetimes.LIVES)));
  }

  private static TableView counts(List<TableRow> rows) {
    return Tables.view(
        "lives-table",
        "Lives on record, the whole fleet",
        SPEC,
        rows,
        Tables.columns(
            SPEC,
            SharedColumns.PART,
            PartLifetimes.LIVES,
            PartLifetimes.EXACT,
            PartLifetimes.INTERVAL,
            PartLifetimes.RIGHT_CENSORED,
            PartLifetimes.REJECTED,
            PartLifetimes.UNVERIFIED,
            PartLifetimes.WITHOUT_AGE,
            PartLifetimes.SELECTIVE,
            PartLifetimes.DELAYED_ENTRY,
            PartLifetimes.LONGEST_AGE,
            EvidenceColumns.VERDICT));
  }

  private static TableView fits(List<TableRow> rows) {
    List<Shown> columns = new ArrayList<>();
    for (String name :
        List.of(
            "part",
            "distribution",
            "aic_above_best",
            "fit_check_p",
            "shape",
            "scale_h",
            "b10_h",
            "failed_by_8000_h_share",
            "failed_by_interval_share",
            "extrapolated",
            "events",
            "verdict")) {
      TableColumn<?> column =
          SPEC.columns().stream()
              .filter(candidate -> candidate.name().equals(name))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("no column " + name));
      columns.add(Shown.of(SPEC, column));
    }
    return Tables.view(
        "fits-table",
        "Life distributions fitted to these lives; of each part the best by AIC first",
        SPEC,
        rows,
        columns);
  }
}
