package leadline.page;

import static leadline.page.Tables.having;

import java.util.List;
import java.util.Optional;
import leadline.publish.Numbers;
import leadline.summary.EvidenceColumns;
import leadline.summary.FindingsByHours;
import leadline.summary.PartFindings;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;
import leadline.summary.Verdict;

/**
 * What the whole fleet's records tell of a part.
 *
 * @param findings since records began; none where there are none
 * @param failed found so, by band of hours since new
 */
record PartInFleet(FailureCurve curve, Optional<TableRow> findings, List<TableRow> failed) {

  static PartInFleet of(Tables tables, String component, String part) {
    Subject fleet = Subject.ofFleet(tables, component);
    return new PartInFleet(
        FailureCurve.of(tables, component, part),
        fleet.rows(PartFindings.SPEC, having(SharedColumns.PART, part)).stream().findFirst(),
        fleet.rows(
            FindingsByHours.SPEC,
            having(SharedColumns.PART, part),
            having(FindingsByHours.FOUND, FindingsByHours.FAILED)));
  }

  /** The chance that a piece of these hours is found failed, in percent with its range. */
  String chance(double age, double workedAt) {
    return curve
        .by(age, workedAt)
        .map(chance -> FleetShare.inWords(chance.estimate(), chance.lower(), chance.upper()))
        .or(() -> ofThoseOpenedAt(age))
        .orElseGet(this::atAnyHours);
  }

  /** Of a piece whose hours are not known. */
  String chance() {
    return FleetShare.of(findings).orElse("hours unknown");
  }

  /** Without a curve, and beyond it, pieces opened at such hours still tell something. */
  private Optional<String> ofThoseOpenedAt(double age) {
    return failed.stream()
        .filter(row -> HoursBand.of(row).filter(band -> band.has(age)).isPresent())
        .filter(row -> row.need(FindingsByHours.OPENED) >= FoundOfPart.ENOUGH_OPENED)
        .filter(row -> !row.need(EvidenceColumns.VERDICT).equals(Verdict.WRONG_CLOCK.word()))
        .flatMap(
            row ->
                row
                    .find(FindingsByHours.FOUND_SHARE.estimate())
                    .map(share -> at(row, share))
                    .stream())
        .findFirst();
  }

  private static String at(TableRow row, double share) {
    return "at such hours "
        + FleetShare.inWords(
            share,
            row.find(FindingsByHours.FOUND_SHARE.lower()).orElse(0.0),
            row.find(FindingsByHours.FOUND_SHARE.upper()).orElse(1.0));
  }

  private String atAnyHours() {
    if (curve.points().isEmpty()) {
      return FleetShare.of(findings).orElse(curve.refusal());
    }
    return "over %s: %s"
        .formatted(
            Numbers.hours(curve.longest()), FleetShare.of(findings).orElse("nothing on record"));
  }
}
