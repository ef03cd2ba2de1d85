package leadline.page;

import static leadline.page.Tables.having;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.summary.EvidenceColumns;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.TableRow;
import leadline.summary.Window;

/** The springs of all components, and the one that is often left unopened in full. */
record SpringSection(Tables tables, Catalogue catalogue) {

  private static final String OFTEN_UNOPENED = "nrv-spring";

  Section section() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Prose(
            "A share of the springs opened is prevalence at the openings made, at their mix of"
                + " ages, not a chance of breaking. What nobody opened is neither sound nor broken:"
                + " the two bounds say what the share of all would be if it were the one or the"
                + " other."));
    blocks.add(new Block.Table(table()));
    catalogue.components().stream()
        .filter(component -> component.part(OFTEN_UNOPENED).isPresent())
        .forEach(
            component ->
                blocks.addAll(
                    new SpringFigures(tables, component.name(), OFTEN_UNOPENED).blocks()));
    blocks.add(
        new Block.Prose("The pages of the components show the other springs in the same way."));
    return new Section("springs", "Springs", blocks);
  }

  private TableView table() {
    return Tables.view(
        "springs-table",
        "Springs opened and found broken, the whole fleet",
        SpringBreakage.SPEC,
        catalogue.components().stream().flatMap(this::rows).toList(),
        SpringSection::ofDecision,
        Tables.columns(
            SpringBreakage.SPEC,
            SharedColumns.COMPONENT,
            SharedColumns.PART,
            SharedColumns.WINDOW,
            SpringBreakage.OVERHAULED,
            SpringBreakage.OPENED,
            SpringBreakage.BROKEN,
            SpringBreakage.BROKEN_SHARE.estimate(),
            SpringBreakage.SHARE_IF_UNOPENED_SOUND,
            SpringBreakage.SHARE_IF_UNOPENED_BROKEN,
            EvidenceColumns.VERDICT));
  }

  private static String ofDecision(TableRow row) {
    return row.need(SharedColumns.WINDOW).equals(Window.TWELVE_MONTHS.word())
        ? RowIds.spring(row.need(SharedColumns.COMPONENT), row.need(SharedColumns.PART))
        : RowIds.NONE;
  }

  private Stream<TableRow> rows(Component component) {
    return Stream.of(Window.MONTH, Window.TWELVE_MONTHS, Window.SINCE_START)
        .flatMap(
            window ->
                Subject.ofFleet(tables, component.name())
                    .in(window)
                    .rows(SpringBreakage.SPEC, having(SharedColumns.HOURS_BAND, "all"))
                    .stream());
  }
}
