package leadline.page;

import static leadline.page.Tables.having;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Reason;
import leadline.publish.Numbers;
import leadline.summary.ComponentRates;
import leadline.summary.EvidenceColumns;
import leadline.summary.Level;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;
import leadline.summary.Window;

/** Functions lost in service this month, beside what twelve months let expect. */
final class BreakdownsOfTheMonth implements Decision {

  private static final Tables.Having<String> BREAKDOWN =
      having(ComponentRates.ENDPOINT, Reason.BREAKDOWN.word());

  @Override
  public String heading() {
    return "Breakdowns this month";
  }

  @Override
  public List<Block.Point> points(Tables tables, Catalogue catalogue) {
    return catalogue.components().stream()
        .map(component -> Subject.ofFleet(tables, component.name()))
        .flatMap(
            subject ->
                subject.in(Window.MONTH).rows(ComponentRates.SPEC, BREAKDOWN).stream()
                    .filter(month -> month.need(EvidenceColumns.EVENTS) > 0)
                    .flatMap(month -> point(subject, month).stream()))
        .toList();
  }

  private static Optional<Block.Point> point(Subject subject, TableRow month) {
    return subject.in(Window.TWELVE_MONTHS).rows(ComponentRates.SPEC, BREAKDOWN).stream()
        .findFirst()
        .map(
            year ->
                new Block.Point(
                    "%s: %s in %s, %s per million h%s; over twelve months %s in %s, %s. %s"
                        .formatted(
                            Named.sentence(subject.component()),
                            Named.counted(month.need(EvidenceColumns.EVENTS), "breakdown"),
                            hours(month),
                            IntervalRows.inWords(month, ComponentRates.RATE),
                            vessels(subject),
                            events(year),
                            hours(year),
                            IntervalRows.inWords(year, ComponentRates.RATE),
                            comparison(month, year)),
                    links(subject)));
  }

  private static String events(TableRow row) {
    return Numbers.count(row.need(EvidenceColumns.EVENTS));
  }

  private static String hours(TableRow row) {
    return row.find(EvidenceColumns.EXPOSURE).map(Numbers::hours).orElse("hours not known");
  }

  /** Limits that do not overlap are a cautious sign of a difference. */
  private static String comparison(TableRow month, TableRow year) {
    boolean apart =
        month
            .find(ComponentRates.RATE.lower())
            .flatMap(lower -> year.find(ComponentRates.RATE.upper()).map(upper -> lower > upper))
            .orElse(false);
    return apart
        ? "That is more than the year lets expect: decide who finds out what has changed."
        : "Chance alone may account for the difference.";
  }

  private static List<Page.Link> links(Subject subject) {
    Page.Link fleet =
        new Page.Link("#" + RowIds.breakdowns(subject.component()), "rates of the fleet");
    return vessels(subject).isEmpty()
        ? List.of(fleet)
        : List.of(fleet, new Page.Link("#" + RowIds.brokenDown(subject.component()), "vessels"));
  }

  private static String vessels(Subject subject) {
    String vessels = namesAndCounts(subject);
    return vessels.isEmpty() ? "" : ", on " + vessels;
  }

  private static String namesAndCounts(Subject subject) {
    return subject.at(Level.VESSEL).in(Window.MONTH).rows(ComponentRates.SPEC, BREAKDOWN).stream()
        .filter(row -> row.need(EvidenceColumns.EVENTS) > 0)
        .map(row -> Named.data(row.need(SharedColumns.STRATUM)) + " " + events(row))
        .collect(Collectors.joining(", "));
  }
}
