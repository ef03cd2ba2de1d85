package leadline.history;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Answer;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.RecordKind;
import leadline.fleet.ReturnLayout;
import leadline.fleet.ReturnLayout.Fill;
import leadline.fleet.Status;

/**
 * What a row of a return sheet makes of the record that it speaks of.
 *
 * @param row a row of a return sheet
 */
record ReturnedAnswer(Cells row) {

  /** Whether the ship filled in anything that changes a record. */
  boolean changesARecord() {
    return isCancelled() || ReturnLayout.toFillIn(row).stream().anyMatch(fill -> fill.isIn(row));
  }

  /** The record that it speaks of; none where it names no overhaul. */
  Optional<RecordKey> record() {
    return row.find(ReturnLayout.OVERHAUL)
        .map(
            overhaul ->
                isOfAPart()
                    ? RecordKey.ofFinding(vessel(), overhaul, row.need(ReturnLayout.PART))
                    : RecordKey.ofOverhaul(vessel(), overhaul));
  }

  /** The version that it makes of the one on record. */
  Cells revised(Cells onRecord) {
    Cells.Builder version = onRecord.change();
    fill(ReturnLayout.toFillIn(row), version);
    fill(isOfAPart() ? ReturnLayout.WITH_FINDING : ReturnLayout.WITH_OVERHAUL, version);
    if (isCancelled()) {
      withdraw(version);
    }
    return version.build();
  }

  /** The record that it makes where there is none; nothing where it does not say enough. */
  Optional<Cells> made() {
    if (isCancelled()) {
      return Optional.empty();
    }
    Cells.Builder made =
        row.find(ReturnLayout.OVERHAUL)
            .map(overhaul -> isOfAPart() ? newFinding(overhaul) : newOverhaul(overhaul))
            .orElseThrow();
    fill(ReturnLayout.toFillIn(row), made);
    return made.isComplete() ? Optional.of(revised(made.build())) : Optional.empty();
  }

  private Cells.Builder newFinding(String overhaul) {
    return Cells.of(RecordKind.FINDINGS)
        .with(FindingLayout.VESSEL, vessel())
        .with(FindingLayout.OVERHAUL, overhaul)
        .with(FindingLayout.PART, row.need(ReturnLayout.PART));
  }

  private Cells.Builder newOverhaul(String overhaul) {
    Cells.Builder made =
        Cells.of(RecordKind.OVERHAULS)
            .with(OverhaulLayout.VESSEL, vessel())
            .with(OverhaulLayout.OVERHAUL, overhaul);
    fill(ReturnLayout.POSITION, made);
    return made;
  }

  private void withdraw(Cells.Builder version) {
    if (isOfAPart()) {
      version.with(FindingLayout.STATUS, Status.CANCELLED);
    } else {
      version.with(OverhaulLayout.STATUS, Status.CANCELLED);
    }
  }

  private void fill(List<Fill<?>> fills, Cells.Builder version) {
    fills.forEach(fill -> fill.copy(row, version));
  }

  private String vessel() {
    return row.need(ReturnLayout.VESSEL);
  }

  private boolean isOfAPart() {
    return row.find(ReturnLayout.PART).isPresent();
  }

  private boolean isCancelled() {
    return row.find(ReturnLayout.ANSWER).filter(Answer.CANCELLED::equals).isPresent();
  }
}
