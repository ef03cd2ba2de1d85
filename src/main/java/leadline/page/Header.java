package leadline.page;

import java.util.List;
import leadline.publish.Issue;
import leadline.publish.Numbers;
import leadline.summary.ComponentRates;
import leadline.summary.TableRow;

/** The lines about the run at the head of each page. */
final class Header {

  private Header() {}

  static List<Page.Fact> facts(Issue issue) {
    long vessels =
        Tables.of(issue).rows(ComponentRates.SPEC).stream()
            .mapToLong((TableRow row) -> row.need(ComponentRates.VESSELS))
            .max()
            .orElse(0);
    return List.of(
        new Page.Fact("Month", issue.manifest().month().toString()),
        new Page.Fact("Fleet", Numbers.count(vessels) + " vessels with hours on record"),
        new Page.Fact("Known at", issue.manifest().knownAt().toString()),
        new Page.Fact("Run", issue.manifest().run()));
  }
}
