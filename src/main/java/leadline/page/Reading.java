package leadline.page;

import java.util.List;
import leadline.publish.Issue;

/** What goes with every copy of the figures. */
final class Reading {

  private Reading() {}

  static Section cautions(Issue issue) {
    return new Section(
        "cautions",
        "Cautions",
        List.of(
            new Block.Points(
                issue.cautions().stream().map(text -> new Block.Point(text, "", "")).toList())));
  }

  /** Who decides, and what the figures are not: the last two of the cautions. */
  static String authority(Issue issue) {
    List<String> cautions = issue.cautions();
    return String.join(" ", cautions.subList(Math.max(0, cautions.size() - 2), cautions.size()));
  }
}
