package leadline.page;

import static leadline.page.Tables.having;

import java.util.List;
import java.util.Optional;
import leadline.publish.Numbers;
import leadline.summary.PartFindings;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.TableRow;

/**
 * What the whole fleet's records tell of a part.
 *
 * @param findings since records began; none where there are none
 * @param bands of hours since new, of a spring
 */
record PartInFleet(FailureCurve curve, Optional<TableRow> findings, List<TableRow> bands) {

  static PartInFleet of(Tables tables, String component, String part) {
    Subject fleet = Subject.ofFleet(tables, component);
    return new PartInFleet(
        FailureCurve.of(tables, component, part),
        fleet.rows(PartFindings.SPEC, having(SharedColumns.PART, part)).stream().findFirst(),
        fleet.rows(SpringBreakage.SPEC, having(SharedColumns.PART, part)));
  }

  /** The chance that a piece of these hours is found failed, in percent with its range. */
  String chance(double age, double workedAt) {
    if (curve.points().isEmpty()) {
      return FleetShare.of(findings).orElse(curve.refusal());
    }
    return curve
        .by(age, workedAt)
        .map(chance -> FleetShare.inWords(chance.estimate(), chance.lower(), chance.upper()))
        .or(() -> ofThoseOpenedAt(age))
        .orElseGet(this::beyond);
  }

  /** Of a piece whose hours are not known. */
  String chance() {
    return FleetShare.of(findings).orElse("hours unknown");
  }

  /** Beyond the lives on record springs opened at such hours still tell something. */
  private Optional<String> ofThoseOpenedAt(double age) {
    return bands.stream()
        .filter(row -> HoursBand.of(row).filter(band -> band.has(age)).isPresent())
        .flatMap(
            row ->
                row
                    .find(SpringBreakage.BROKEN_SHARE.estimate())
                    .map(share -> at(row, share))
                    .stream())
        .findFirst();
  }

  private static String at(TableRow row, double share) {
    return "at %s: %s"
        .formatted(
            HoursBand.of(row).map(HoursBand::inWords).orElse(""),
            FleetShare.inWords(
                share,
                row.find(SpringBreakage.BROKEN_SHARE.lower()).orElse(0.0),
                row.find(SpringBreakage.BROKEN_SHARE.upper()).orElse(1.0)));
  }

  private String beyond() {
    return "over %s: %s"
        .formatted(
            Numbers.hours(curve.longest()), FleetShare.of(findings).orElse("nothing on record"));
  }
}
