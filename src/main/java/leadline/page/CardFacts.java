package leadline.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
record CardFacts(TableRow due, List<TableRow> cards) {

  List<Page.Fact> facts() {
    List<Page.Fact> facts = new ArrayList<>();
    facts.add(new Page.Fact("item", due.find(DueList.ITEM).orElse("none fitted on record")));
    facts.add(new Page.Fact("since overhaul", since()));
    facts.add(new Page.Fact("due", whenDue()));
    due.find(DueList.SHUT_PART)
        .ifPresent(part -> facts.add(new Page.Fact("open " + Named.words(part), shut())));
    facts.add(new Page.Fact("last opening pressure", pressure()));
    stated(JobCards.STATED_LAPS)
        .ifPresent(laps -> facts.add(new Page.Fact("seat lapped so far", laps(laps))));
    lastOn().ifPresent(day -> facts.add(new Page.Fact("last findings", day)));
    cards.stream()
        .filter(card -> card.find(JobCards.AGE).isEmpty())
        .map(card -> card.need(JobCards.SEEN_FROM))
        .min(Comparator.naturalOrder())
        .ifPresent(day -> facts.add(new Page.Fact("parts of unknown hours: unknown since", day)));
    return facts;
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
    String hours = due.find(DueList.SHUT_HOURS).map(Numbers::hours).orElse("unknown hours");
    return due.find(DueList.OPENED_ON)
        .map(day -> "not opened for %s, since %s".formatted(hours, day))
        .orElseGet(() -> "never opened on record, at least " + hours);
  }

  private String pressure() {
    return stated(JobCards.PRESSURE)
        .map(bar -> Numbers.wholeHours(bar) + " bar" + on(JobCards.PRESSURE_ON))
        .orElse("not on record");
  }

  private String laps(double laps) {
    return Numbers.wholeHours(laps) + on(JobCards.STATED_LAPS_ON);
  }

  private String on(TableColumn<String> day) {
    return stated(day).map(on -> ", " + on).orElse("");
  }
}
