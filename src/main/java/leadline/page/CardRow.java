package leadline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.publish.Numbers;
import leadline.summary.DueList;
import leadline.summary.JobCards;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;

/** A part of a position: what is known of the piece, and the position's row of the due list. */
record CardRow(Component component, TableRow due, TableRow row) {

  String part() {
    return row.need(SharedColumns.PART);
  }

  /** When the position falls due; now, where it is overdue or its hours are unknown. */
  Optional<Double> ageAtOpening() {
    double ahead = Math.max(0, due.find(DueList.REMAINING).orElse(0.0));
    return row.find(JobCards.AGE).map(age -> age + ahead);
  }

  /**
   * @param lastOn the day of the item's last findings, which stands above its parts
   */
  Briefing.PartLine line(PartInFleet fleet, String lastOn) {
    return new Briefing.PartLine(
        part(), age(), last(lastOn), Numbers.count(row.need(JobCards.LAPS)), chance(fleet));
  }

  private Cell age() {
    return row.find(JobCards.AGE)
        .map(FigureFormat.HOURS::cell)
        .orElseGet(() -> new Cell.Words(unknown(row.need(JobCards.SEEN))));
  }

  private static String unknown(double seen) {
    return seen >= 1 ? "unknown, \u2265\u00a0" + Numbers.wholeHours(seen) : "unknown";
  }

  private String last(String lastOn) {
    return row.find(JobCards.LAST_ON).map(on -> last(on, lastOn)).orElse("nothing on record");
  }

  private String last(String on, String lastOn) {
    List<String> words = new ArrayList<>();
    words.add(row.find(JobCards.LAST_FOUND).orElseGet(this::notFound));
    row.find(JobCards.LAST_ACTION).filter(action -> !action.equals("none")).ifPresent(words::add);
    if (!on.equals(lastOn)) {
      words.add(on);
    }
    return String.join(", ", words);
  }

  private String notFound() {
    return row.find(JobCards.LAST_OPENED)
        .filter(opened -> !opened.equals("opened"))
        .orElse("not stated");
  }

  private String chance(PartInFleet fleet) {
    return row.need(JobCards.KEPT_FAILED).equals("yes")
        ? "found failed, kept"
        : ageAtOpening()
            .map(age -> fleet.chance(age, row.find(JobCards.WORKED_AT).orElse(0.0)))
            .orElseGet(fleet::chance);
  }
}
