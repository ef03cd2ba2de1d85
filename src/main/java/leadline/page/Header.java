package leadline.page;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import leadline.publish.Issue;
import leadline.publish.Numbers;
import leadline.summary.ComponentRates;
import leadline.summary.TableRow;

/** The lines about the run at the head of each page. */
final class Header {

  private static final DateTimeFormatter KNOWN_AT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss 'UTC'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);

  private Header() {}

  static List<Page.Fact> facts(Issue issue) {
    long vessels =
        Tables.of(issue).rows(ComponentRates.SPEC).stream()
            .mapToLong((TableRow row) -> row.need(ComponentRates.VESSELS))
            .max()
            .orElse(0);
    return List.of(
        new Page.Fact("Month", issue.manifest().month() + ", until 24:00 UTC"),
        new Page.Fact("Fleet", Numbers.count(vessels) + " vessels with hours on record"),
        new Page.Fact("Known at", KNOWN_AT.format(issue.manifest().knownAt())),
        new Page.Fact("Run", issue.manifest().run()));
  }
}
