package leadline.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.FoundWord;
import leadline.fleet.RecordKind;
import leadline.fleet.Statement;
import leadline.sample.PartModel.Change;
import leadline.sample.VesselCharacter.Ages;
import leadline.sample.VesselCharacter.Care;

/** Writes a vessel's findings as its engineers would, with at most one error in each. */
final class FindingLog {

  private static final List<String> OWN_WORDS =
      List.of("o/hauled ok", "used", "found bad", "see photo", "n/a", "as usual");

  private static final String OLD_NOZZLE = "NZ-40";
  private static final String NEW_NOZZLE = "NZ-41";

  private final VesselCharacter vessel;
  private final LocalDate newNozzles;
  private final ErrorRates rates;
  private final ErrorList errors;
  private final Draw draw;
  private final Draw slips;

  FindingLog(VesselCharacter vessel, FleetPlan plan, ErrorList errors, Draw draw) {
    this.vessel = vessel;
    this.newNozzles = plan.nozzleTypeChangedOn();
    this.rates = plan.errors();
    this.errors = errors;
    this.draw = draw;
    this.slips = draw.branch("slips");
  }

  SampleRow row(TrueFinding finding, String overhaul, LocalDate day) {
    Optional<RecordError> error = error(finding);
    error.ifPresent(
        kind ->
            errors.add(
                kind, RecordKind.FINDINGS.word(), overhaul, finding.part().name(), truth(finding)));
    Cells.Builder cells =
        Cells.of(RecordKind.FINDINGS)
            .with(FindingLayout.VESSEL, vessel.vessel())
            .with(FindingLayout.OVERHAUL, overhaul)
            .with(FindingLayout.PART, finding.part().name())
            .with(FindingLayout.ACTION, finding.action());
    if (error.filter(RecordError.BLANK_FINDING::equals).isEmpty()) {
      writeCondition(finding, cells);
      if (error.filter(RecordError.FOUND_NOT_OPENED::equals).isEmpty()) {
        cells.with(
            FindingLayout.OPENED, finding.found().isPresent() ? Statement.YES : Statement.NO);
      }
    }
    if (error.filter(RecordError.MISSING_FOR_SOUND::equals).isPresent()) {
      cells.with(FindingLayout.FOUND, FoundWord.MISSING);
    }
    if (error.filter(RecordError.UNOPENED_AS_SOUND::equals).isPresent()) {
      cells.with(FindingLayout.OPENED, Statement.YES).with(FindingLayout.FOUND, FoundWord.SOUND);
    }
    if (error.filter(RecordError.RENEWAL_UNREPORTED::equals).isPresent()) {
      cells.with(FindingLayout.ACTION, finding.part().isSpring() ? Action.NONE : Action.CLEANED);
    } else {
      writePartNumber(finding, day, cells);
    }
    return error.filter(RecordError.UNMAPPED_WORDING::equals).isPresent()
        ? new SampleRow(cells.build(), Map.of(FindingLayout.FOUND, draw.oneOf(OWN_WORDS)))
        : SampleRow.of(cells.build());
  }

  private Optional<RecordError> error(TrueFinding finding) {
    if (finding.action() == Action.RENEWED && happens(RecordError.RENEWAL_UNREPORTED)) {
      return Optional.of(RecordError.RENEWAL_UNREPORTED);
    } else if (finding.found().isEmpty()
        && vessel.care() == Care.CARELESS
        && happens(RecordError.UNOPENED_AS_SOUND)) {
      return Optional.of(RecordError.UNOPENED_AS_SOUND);
    } else if (happens(RecordError.BLANK_FINDING)) {
      return Optional.of(RecordError.BLANK_FINDING);
    }
    if (finding.found().isEmpty()) {
      return Optional.empty();
    } else if (happens(RecordError.UNMAPPED_WORDING)) {
      return Optional.of(RecordError.UNMAPPED_WORDING);
    }
    return slip(finding);
  }

  private Optional<RecordError> slip(TrueFinding finding) {
    double drawn = slips.uniform();
    if (drawn < rates.of(RecordError.FOUND_NOT_OPENED)) {
      return Optional.of(RecordError.FOUND_NOT_OPENED);
    }
    boolean isMissing =
        drawn > 1 - rates.of(RecordError.MISSING_FOR_SOUND)
            && finding.found().equals(Optional.of(FoundWord.SOUND));
    return isMissing ? Optional.of(RecordError.MISSING_FOR_SOUND) : Optional.empty();
  }

  private static String truth(TrueFinding finding) {
    return finding.found().map(FoundWord::word).orElse("not opened");
  }

  private void writeCondition(TrueFinding finding, Cells.Builder cells) {
    finding.found().ifPresent(found -> cells.with(FindingLayout.FOUND, found));
    finding.revealed().ifPresent(revealed -> cells.with(FindingLayout.REVEALED, revealed));
    if (vessel.ages() == Ages.STATED && finding.found().isPresent()) {
      cells.with(FindingLayout.HOURS_SINCE_NEW, finding.age());
    }
  }

  private void writePartNumber(TrueFinding finding, LocalDate day, Cells.Builder cells) {
    boolean isNozzle =
        finding.changes().contains(Change.NOZZLE_TYPE) && finding.action() == Action.RENEWED;
    if (isNozzle) {
      cells.with(FindingLayout.PART_NUMBER, day.isBefore(newNozzles) ? OLD_NOZZLE : NEW_NOZZLE);
    }
  }

  private boolean happens(RecordError kind) {
    return draw.chance(rates.of(kind));
  }
}
