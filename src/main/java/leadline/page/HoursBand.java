package leadline.page;

import java.util.Optional;
import leadline.publish.Numbers;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;

/**
 * A band of hours since new.
 *
 * @param from the least hours in it
 * @param to the least hours beyond it
 */
record HoursBand(double from, double to) {

  /** None of a row of all hours or of unknown ones. */
  static Optional<HoursBand> of(TableRow row) {
    return of(row.need(SharedColumns.HOURS_BAND));
  }

  /** A word of the column, for people. */
  static String inWords(String word) {
    return of(word)
        .map(HoursBand::inWords)
        .orElse(word.equals("unknown") ? "hours unknown" : "any hours");
  }

  private static Optional<HoursBand> of(String word) {
    String[] edges = word.split("-", -1);
    return edges.length == 2
        ? Optional.of(new HoursBand(Double.parseDouble(edges[0]), Double.parseDouble(edges[1])))
        : Optional.empty();
  }

  boolean has(double age) {
    return age >= from && age < to;
  }

  String inWords() {
    return Numbers.wholeHours(from) + "\u2013" + Numbers.hours(to);
  }
}
