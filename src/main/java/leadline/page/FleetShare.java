package leadline.page;

import java.util.Optional;
import leadline.publish.Numbers;
import leadline.summary.PartFindings;
import leadline.summary.TableRow;

/** Shares on a narrow sheet: in percent, without the sign. */
final class FleetShare {

  private FleetShare() {}

  /** The share found failed of those opened in the whole fleet at any hours. */
  static Optional<String> of(Optional<TableRow> findings) {
    return findings.flatMap(
        row ->
            row.find(PartFindings.FAILED_SHARE.estimate())
                .map(
                    share ->
                        "fleet "
                            + inWords(
                                share,
                                row.find(PartFindings.FAILED_SHARE.lower()).orElse(0.0),
                                row.find(PartFindings.FAILED_SHARE.upper()).orElse(1.0))));
  }

  static String inWords(double share, double lower, double upper) {
    return "%s (%s\u2013%s)".formatted(percent(share), percent(lower), percent(upper));
  }

  private static String percent(double share) {
    return Numbers.share(share).replace(" %", "");
  }
}
