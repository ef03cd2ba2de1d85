package leadline.page;

import static leadline.page.Tables.having;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.fleet.Renewal;
import leadline.publish.Numbers;
import leadline.summary.EvidenceColumns;
import leadline.summary.PartFindings;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.TableRow;
import leadline.summary.Verdict;

/** What the whole fleet found of each part since records began, and what to have ready. */
record Kits(Tables tables) {

  private static final String NONE = "none on record";

  /**
   * @param positions of the component in the batch
   */
  Briefing.Kit of(Component component, long positions, HoursAhead hours) {
    return new Briefing.Kit(
        Named.sentence(component.name()),
        positions,
        component.parts().stream().map(part -> line(component, part, positions, hours)).toList());
  }

  private Briefing.KitLine line(Component component, Part part, long positions, HoursAhead hours) {
    Optional<TableRow> fleet = findings(component, part);
    return new Briefing.KitLine(
        part.name(),
        fleet.map(Kits::found).orElse(NONE) + atHours(component, part, hours),
        pieces(part, fleet, positions),
        part.renewal() == Renewal.ROUTINE
            ? "renewed as a routine"
            : fleet.map(Kits::renewed).orElse(NONE));
  }

  private Optional<TableRow> findings(Component component, Part part) {
    return Subject.ofFleet(tables, component.name())
        .rows(PartFindings.SPEC, having(SharedColumns.PART, part.name()))
        .stream()
        .findFirst();
  }

  private static String found(TableRow row) {
    long opened = row.need(PartFindings.OPENED);
    return opened == 0
        ? "never opened in %s overhauls".formatted(Numbers.count(row.need(PartFindings.OVERHAULED)))
        : "%s of %s opened failed, %s%s"
            .formatted(
                Numbers.count(row.need(PartFindings.FAILED)),
                Numbers.count(opened),
                IntervalRows.inWords(row, PartFindings.FAILED_SHARE),
                verdict(row));
  }

  /** Beside counts and limits, only a verdict that warns. */
  private static String verdict(TableRow row) {
    String word = row.need(EvidenceColumns.VERDICT);
    return word.equals(Verdict.OK.word()) ? "" : "; " + word.replace('-', ' ');
  }

  private static String renewed(TableRow row) {
    return "renewed at %s of %s overhauls"
        .formatted(
            Numbers.count(row.need(PartFindings.RENEWED)),
            Numbers.count(row.need(PartFindings.OVERHAULED)));
  }

  /** Of springs the bands of hours that the pieces of the batch will have reached. */
  private String atHours(Component component, Part part, HoursAhead hours) {
    return Subject.ofFleet(tables, component.name())
        .rows(SpringBreakage.SPEC, having(SharedColumns.PART, part.name()))
        .stream()
        .flatMap(
            row ->
                HoursBand.of(row)
                    .filter(band -> hours.areIn(part, band))
                    .map(band -> inBand(row, band))
                    .stream())
        .collect(Collectors.joining());
  }

  private static String inBand(TableRow row, HoursBand band) {
    return "; at %s %s of %s, %s"
        .formatted(
            band.inWords(),
            Numbers.count(row.need(SpringBreakage.BROKEN)),
            Numbers.count(row.need(SpringBreakage.OPENED)),
            row.need(SpringBreakage.OPENED) == 0
                ? row.need(EvidenceColumns.VERDICT)
                : IntervalRows.inWords(row, SpringBreakage.BROKEN_SHARE));
  }

  /** One a position where renewed as a routine; else as the fleet renews, and one at the least. */
  private static String pieces(Part part, Optional<TableRow> fleet, long positions) {
    if (part.renewal() == Renewal.ROUTINE) {
      return Numbers.count(positions);
    }
    return fleet
        .filter(row -> row.need(PartFindings.OVERHAULED) > 0)
        .map(
            row ->
                positions
                    * (double) row.need(PartFindings.RENEWED)
                    / row.need(PartFindings.OVERHAULED))
        .map(expected -> Numbers.count(Math.max(1, (long) Math.ceil(expected))))
        .orElse("–");
  }

  /** The ages that the batch's pieces of each part will have at their opening. */
  record HoursAhead(List<CardRow> cards) {

    boolean areIn(Part part, HoursBand band) {
      return cards.stream()
          .filter(card -> card.part().equals(part.name()))
          .flatMap(card -> card.ageAtOpening().stream())
          .anyMatch(band::has);
    }
  }
}
