package leadline.fleet;

import java.time.Instant;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;

/** One row of a machine's running-hours log. */
public record Reading(
    MachineId machine, Instant at, RunningHours hours, ReadingKind kind, Origin origin) {

  public static Reading of(SourcedRow row) {
    Cells cells = row.cells();
    return new Reading(
        new MachineId(cells.need(HoursLayout.VESSEL), cells.need(HoursLayout.MACHINE)),
        cells.need(HoursLayout.READ_AT),
        cells.need(HoursLayout.HOURS),
        cells.need(HoursLayout.KIND),
        row.origin());
  }

  /** The same reading, of that machine. */
  public Reading of(MachineId other) {
    return new Reading(other, at, hours, kind, origin);
  }
}
