package leadline.page;

import java.util.List;
import java.util.Optional;
import leadline.summary.TableRow;

/** The vessels that have no briefing. */
final class NothingDue {

  private NothingDue() {}

  /**
   * None where every vessel has a briefing.
   *
   * @param month of each vessel
   */
  static Optional<String> sentence(NamedTable month) {
    List<String> idle =
        month.rows().stream()
            .filter(row -> isNone(month, row, "overdue") && isNone(month, row, "due_soon"))
            .map(row -> Named.data(month.text(row, "vessel")))
            .toList();
    return idle.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Nothing overdue or due soon, and so no briefing: " + String.join(", ", idle) + ".");
  }

  private static boolean isNone(NamedTable month, TableRow row, String column) {
    return month.text(row, column).equals("0");
  }
}
