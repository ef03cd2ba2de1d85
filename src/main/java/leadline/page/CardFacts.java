package leadline.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Component;
import leadline.publish.Numbers;
import leadline.summary.DueForecast;
import leadline.summary.DueList;
import leadline.summary.JobCards;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;

/**
 * What stands above a position's parts.
 *
 * @param cards of its parts; none where no item is fitted
 */
record CardFacts(Component component, TableRow due, List<TableRow> cards) {

  List<Page.Fact> facts() {
    List<Page.Fact> facts = new ArrayList<>();
    facts.add(new Page.Fact("item", due.find(DueList.ITEM).orElse("none fitted on record")));
    facts.add(new Page.Fact("since overhaul", since()));
    facts.add(new Page.Fact("due", whenDue()));
    due.find(DueList.SHUT_PART)
        .ifPresent(part -> facts.add(new Page.Fact(Named.words(part), shut())));
    pressure().ifPresent(bar -> facts.add(new Page.Fact("last opening pressure", bar)));
    stated(JobCards.STATED_LAPS)
        .ifPresent(laps -> facts.add(new Page.Fact("seat lapped so far", laps(laps))));
    lastOn().ifPresent(day -> facts.add(new Page.Fact("last findings", day)));
    ofUnknownHours()
        .min(Comparator.comparing(card -> card.need(JobCards.SEEN_FROM)))
        .ifPresent(card -> facts.add(new Page.Fact("parts of unknown hours", unknownSince(card))));
    return facts;
  }

  private Stream<TableRow> ofUnknownHours() {
    return cards.stream().filter(card -> card.find(JobCards.AGE).isEmpty());
  }

  /** An item that only came into sight now has no hours of its own on record. */
  private static String unknownSince(TableRow card) {
    String day = card.need(JobCards.SEEN_FROM);
    return card.need(JobCards.SEEN) >= 1
        ? "unknown since " + day
        : "nothing is on record of this item before " + day;
  }

  /** The day of the newest finding of any part. */
  Optional<String> lastOn() {
    return cards.stream()
        .flatMap(card -> card.find(JobCards.LAST_ON).stream())
        .max(Comparator.naturalOrder());
  }

  /** Every part's row has what is stated of the whole item. */
  private <T> Optional<T> stated(TableColumn<T> column) {
    return cards.stream().findFirst().flatMap(card -> card.find(column));
  }

  private String since() {
    String day = due.need(DueList.SINCE_ON);
    return due.find(DueList.HOURS)
        .map(hours -> Numbers.hours(hours) + (isNew() ? ", new on " : ", on ") + day)
        .orElseGet(
            () ->
                "unknown since %s, at least %s"
                    .formatted(day, Numbers.hours(due.need(DueList.RUN))));
  }

  private boolean isNew() {
    return due.need(DueList.SINCE).equals("new");
  }

  private String whenDue() {
    String limit = "limit " + Numbers.hours(due.need(DueList.LIMIT));
    String standing = due.need(DueList.STANDING).replace('-', ' ');
    return due.find(DueForecast.DUE_ON)
        .map(day -> "%s, about %s, %s".formatted(standing, day, limit))
        .orElseGet(() -> standing + ", " + limit);
  }

  private String shut() {
    double hours = due.find(DueList.SHUT_HOURS).orElse(0.0);
    return due.find(DueList.OPENED_ON)
        .map(day -> "not opened for %s, since %s".formatted(Numbers.hours(hours), day))
        .orElseGet(
            () ->
                "never opened on record"
                    + (hours >= 1 ? ", not for %s at least".formatted(Numbers.hours(hours)) : ""));
  }

  private Optional<String> pressure() {
    return stated(JobCards.PRESSURE)
        .map(bar -> Numbers.wholeHours(bar) + " bar" + on(JobCards.PRESSURE_ON))
        .or(() -> Blanks.isTested(component) ? Optional.of("not on record") : Optional.empty());
  }

  private String laps(double laps) {
    return Numbers.wholeHours(laps) + on(JobCards.STATED_LAPS_ON);
  }

  private String on(TableColumn<String> day) {
    return stated(day).map(on -> ", " + on).orElse("");
  }
}
