package leadline.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leadline.fleet.Action;
import leadline.fleet.Cells;
import leadline.fleet.MovementLayout;
import leadline.fleet.RecordKind;

/** Books the spares that a vessel's overhauls use out of stock. */
final class MovementLog {

  private final VesselCharacter vessel;
  private final ErrorRates rates;
  private final ErrorList errors;
  private final Draw draw;
  private int count = 0;

  MovementLog(VesselCharacter vessel, ErrorRates rates, ErrorList errors, Draw draw) {
    this.vessel = vessel;
    this.rates = rates;
    this.errors = errors;
    this.draw = draw;
  }

  List<SampleRow> rows(TrueOverhaul overhaul, String id) {
    List<SampleRow> rows = new ArrayList<>();
    for (TrueFinding finding : overhaul.findings()) {
      if (isBooked(finding, id)) {
        rows.add(row(overhaul, finding, id));
      }
    }
    return rows;
  }

  private boolean isBooked(TrueFinding finding, String overhaul) {
    boolean isUsed = finding.action() == Action.RENEWED;
    RecordError kind = isUsed ? RecordError.MOVEMENT_LACKING : RecordError.MOVEMENT_NEEDLESS;
    boolean isWrong = draw.chance(rates.of(kind));
    if (isWrong) {
      errors.add(kind, RecordKind.MOVEMENTS.word(), overhaul, finding.part().name());
    }
    return isUsed != isWrong;
  }

  private SampleRow row(TrueOverhaul overhaul, TrueFinding finding, String id) {
    count++;
    return SampleRow.of(
        Cells.of(RecordKind.MOVEMENTS)
            .with(MovementLayout.VESSEL, vessel.vessel())
            .with(MovementLayout.MOVEMENT, String.format(Locale.ROOT, "M%05d", count))
            .with(MovementLayout.PART, finding.part().name())
            .with(MovementLayout.MOVED_ON, overhaul.day())
            .with(MovementLayout.QUANTITY, -1L)
            .with(MovementLayout.OVERHAUL, id)
            .build());
  }
}
