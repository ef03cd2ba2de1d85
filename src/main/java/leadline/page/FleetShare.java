package leadline.page;

import java.util.Optional;
import leadline.publish.Numbers;
import leadline.summary.PartFindings;
import leadline.summary.TableRow;

/** The share found failed of those opened in the whole fleet, on a narrow sheet. */
final class FleetShare {

  private FleetShare() {}

  /**
   * @param because why nothing of the piece's own hours can be said
   */
  static String of(Optional<TableRow> findings, String because) {
    return findings
        .flatMap(
            row ->
                row.find(PartFindings.FAILED_SHARE.estimate())
                    .map(
                        share ->
                            "fleet "
                                + inWords(
                                    share,
                                    row.find(PartFindings.FAILED_SHARE.lower()).orElse(0.0),
                                    row.find(PartFindings.FAILED_SHARE.upper()).orElse(1.0))))
        .orElse(because);
  }

  static String inWords(double share, double lower, double upper) {
    return "%s (%s\u2013%s)"
        .formatted(
            Numbers.share(share), Numbers.share(lower).replace(" %", ""), Numbers.share(upper))
        .replace(" %", "\u00a0%");
  }
}
