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
   * @param fleet of the part's findings; none where there are none
   */
  Briefing.PartLine line(FailureCurve curve, Optional<TableRow> fleet, String lastOn) {
    return new Briefing.PartLine(
        part(), age(), last(lastOn), Numbers.count(row.need(JobCards.LAPS)), chance(curve, fleet));
  }

  private Cell age() {
    return row.find(JobCards.AGE)
        .map(FigureFormat.HOURS::cell)
        .orElseGet(
            () ->
                new Cell.Words(
                    "unknown, \u2265\u00a0" + Numbers.wholeHours(row.need(JobCards.SEEN))));
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

  private String chance(FailureCurve curve, Optional<TableRow> fleet) {
    if (row.need(JobCards.KEPT_FAILED).equals("yes")) {
      return "found failed, kept";
    }
    if (curve.points().isEmpty()) {
      return FleetShare.of(fleet, curve.refusal());
    }
    return ageAtOpening()
        .map(age -> chance(curve, age))
        .orElseGet(() -> FleetShare.of(fleet, "hours unknown"));
  }

  /** Beyond the ages at which the chance is published it is greater still. */
  private String chance(FailureCurve curve, double age) {
    double workedAt = row.find(JobCards.WORKED_AT).orElse(0.0);
    return curve
        .by(Math.min(age, curve.longest()), workedAt)
        .filter(chance -> workedAt < curve.longest())
        .map(
            chance ->
                age > curve.longest()
                    ? "> %s (> %s)"
                        .formatted(Numbers.share(chance.estimate()), Numbers.share(chance.lower()))
                    : FleetShare.inWords(chance.estimate(), chance.lower(), chance.upper()))
        .orElseGet(() -> "none beyond " + Numbers.hours(curve.longest()));
  }
}
