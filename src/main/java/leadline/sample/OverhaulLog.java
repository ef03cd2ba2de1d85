package leadline.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.RecordKind;
import leadline.quantity.RunningHours;

/** Writes a vessel's overhauls as its engineers would, with their errors. */
final class OverhaulLog {

  private static final int LEAST_HOURS_OFF = 200;
  private static final int MOST_HOURS_OFF = 1500;

  private final VesselCharacter vessel;
  private final FindingLog findingLog;
  private final ErrorRates rates;
  private final ErrorList errors;
  private final Draw draw;
  private final Draw slips;
  private final SerialSlips serialSlips;
  private final MovementLog movementLog;
  private final List<SampleRow> overhauls = new ArrayList<>();
  private final List<SampleRow> findings = new ArrayList<>();
  private final List<SampleRow> movements = new ArrayList<>();
  private int count = 0;

  OverhaulLog(VesselCharacter vessel, FleetPlan plan, ErrorList errors, Draw draw) {
    this.vessel = vessel;
    this.findingLog = new FindingLog(vessel, plan, errors, draw.branch("findings"));
    this.rates = plan.errors();
    this.errors = errors;
    this.draw = draw;
    this.slips = draw.branch("slips");
    this.movementLog = new MovementLog(vessel, rates, errors, draw.branch("movements"));
    this.serialSlips = new SerialSlips(rates, errors, draw.branch("serials"));
  }

  List<SampleRow> overhauls() {
    return overhauls;
  }

  List<SampleRow> findings() {
    return findings;
  }

  List<SampleRow> movements() {
    return movements;
  }

  void write(TrueOverhaul overhaul, Counter counter) {
    count++;
    String id = String.format(Locale.ROOT, "W%04d", count);
    if (overhaul.serials().filter(TrueOverhaul.Serials::isSwap).isPresent()
        && slips.chance(rates.of(RecordError.SWAP_UNREPORTED))) {
      errors.add(RecordError.SWAP_UNREPORTED, RecordKind.OVERHAULS.word(), id, "");
      return;
    }
    SampleRow row = row(overhaul, id, counter.shown(overhaul.tenths()));
    List<SampleRow> itsFindings =
        overhaul.findings().stream()
            .map(finding -> findingLog.row(finding, id, overhaul.day()))
            .toList();
    movements.addAll(movementLog.rows(overhaul, id));
    int copies = happens(RecordError.DUPLICATE, id) ? 2 : 1;
    for (int copy = 0; copy < copies; copy++) {
      overhauls.add(row);
      findings.addAll(itsFindings);
    }
  }

  private SampleRow row(TrueOverhaul overhaul, String id, RunningHours hours) {
    Cells.Builder cells =
        Cells.of(RecordKind.OVERHAULS)
            .with(OverhaulLayout.VESSEL, vessel.vessel())
            .with(OverhaulLayout.OVERHAUL, id)
            .with(OverhaulLayout.MACHINE, overhaul.position().machine().machine())
            .with(OverhaulLayout.COMPONENT, overhaul.position().component())
            .with(OverhaulLayout.REASON, overhaul.reason());
    if (overhaul.position().unit() > 0) {
      cells.with(OverhaulLayout.UNIT, (long) overhaul.position().unit());
    }
    if (overhaul.position().place() > 0) {
      cells.with(OverhaulLayout.PLACE, (long) overhaul.position().place());
    }
    overhaul
        .serials()
        .ifPresent(serials -> writeSerials(slips(overhaul, serials, id), serials, id, cells));
    written(hours, id).ifPresent(figure -> cells.with(OverhaulLayout.MACHINE_HOURS, figure));
    LocalDate day = overhaul.day();
    if (!happens(RecordError.DATE_ORDER, id)) {
      return SampleRow.of(cells.with(OverhaulLayout.DONE_ON, day).build());
    } else if (day.getDayOfMonth() <= 12) {
      LocalDate other = LocalDate.of(day.getYear(), day.getDayOfMonth(), day.getMonthValue());
      return SampleRow.of(cells.with(OverhaulLayout.DONE_ON, other).build());
    }
    Map<Column<?>, String> noSuchDay = Map.of(OverhaulLayout.DONE_ON, swapped(day));
    return new SampleRow(cells.with(OverhaulLayout.DONE_ON, day).build(), noSuchDay);
  }

  private static String swapped(LocalDate day) {
    return String.format(
        Locale.ROOT, "%d-%02d-%02d", day.getYear(), day.getDayOfMonth(), day.getMonthValue());
  }

  private TrueOverhaul.Serials slips(
      TrueOverhaul overhaul, TrueOverhaul.Serials serials, String id) {
    return serialSlips.written(overhaul.position(), serials, id);
  }

  private void writeSerials(
      TrueOverhaul.Serials serials, TrueOverhaul.Serials truth, String id, Cells.Builder cells) {
    boolean removedLacks = draw.chance(.5);
    boolean lacking = truth.isSwap() && happens(RecordError.SERIAL_LACKING, id);
    if (!(lacking && removedLacks)) {
      cells.with(OverhaulLayout.REMOVED_SERIAL, serials.removed());
    }
    if (!lacking || removedLacks) {
      cells.with(OverhaulLayout.FITTED_SERIAL, serials.fitted());
    }
  }

  private Optional<RunningHours> written(RunningHours hours, String id) {
    int off = draw.among(LEAST_HOURS_OFF, MOST_HOURS_OFF);
    if (happens(RecordError.NO_HOURS, id)) {
      return Optional.empty();
    } else if (happens(RecordError.HOURS_OFF, id)) {
      RunningHours error = RunningHours.ofHours(off);
      return Optional.of(
          hours.isAbove(error) && draw.chance(.5) ? hours.minus(error) : hours.plus(error));
    }
    return happens(RecordError.DIGITS_TRANSPOSED, id)
        ? Optional.of(Digits.firstTransposed(hours))
        : Optional.of(hours);
  }

  private boolean happens(RecordError kind, String id) {
    boolean happens = draw.chance(rates.of(kind));
    if (happens) {
      errors.add(kind, RecordKind.OVERHAULS.word(), id, "");
    }
    return happens;
  }
}
