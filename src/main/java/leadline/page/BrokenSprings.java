package leadline.page;

import static leadline.page.Tables.having;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.publish.Numbers;
import leadline.summary.EvidenceColumns;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.TableRow;
import leadline.summary.Verdict;
import leadline.summary.Window;

/** Springs found broken in twelve months, and what the unopened ones leave open. */
final class BrokenSprings implements Decision {

  @Override
  public String heading() {
    return "Springs found broken";
  }

  @Override
  public List<Block.Point> points(Tables tables, Catalogue catalogue) {
    return catalogue.components().stream()
        .flatMap(
            component ->
                component.parts().stream()
                    .filter(Part::isSpring)
                    .flatMap(spring -> point(tables, component, spring).stream()))
        .toList();
  }

  private static Optional<Block.Point> point(Tables tables, Component component, Part spring) {
    return Subject.ofFleet(tables, component.name())
        .in(Window.TWELVE_MONTHS)
        .rows(
            SpringBreakage.SPEC,
            having(SharedColumns.PART, spring.name()),
            having(SharedColumns.HOURS_BAND, "all"))
        .stream()
        .filter(row -> row.need(SpringBreakage.BROKEN) > 0)
        .findFirst()
        .map(
            row ->
                new Block.Point(
                    sentence(row),
                    List.of(
                        new Page.Link(
                            "#" + RowIds.spring(component.name(), spring.name()),
                            "springs of twelve months"))));
  }

  private static String sentence(TableRow row) {
    return "%s, %s: in twelve months %s of %s opened %s broken, %s. %s"
        .formatted(
            Named.sentence(row.need(SharedColumns.COMPONENT)),
            Named.words(row.need(SharedColumns.PART)),
            Numbers.count(row.need(SpringBreakage.BROKEN)),
            Numbers.count(row.need(SpringBreakage.OPENED)),
            row.need(SpringBreakage.BROKEN) == 1 ? "was" : "were",
            IntervalRows.inWords(row, SpringBreakage.BROKEN_SHARE),
            unopened(row));
  }

  private static String unopened(TableRow row) {
    long unopened = row.need(SpringBreakage.OVERHAULED) - row.need(SpringBreakage.OPENED);
    if (unopened == 0) {
      return "Every overhaul opened it.";
    }
    String bounds =
        "%s of %s left it unopened: of all, between %s and %s are broken."
            .formatted(
                Numbers.count(unopened),
                Named.counted(row.need(SpringBreakage.OVERHAULED), "overhaul"),
                share(row.find(SpringBreakage.SHARE_IF_UNOPENED_SOUND)),
                share(row.find(SpringBreakage.SHARE_IF_UNOPENED_BROKEN)));
    return row.need(EvidenceColumns.VERDICT).equals(Verdict.SELECTIVE_OPENING.word())
        ? bounds + " Decide whether every overhaul is to open it."
        : bounds;
  }

  private static String share(Optional<Double> share) {
    return share.map(Numbers::share).orElse("an unknown share");
  }
}
