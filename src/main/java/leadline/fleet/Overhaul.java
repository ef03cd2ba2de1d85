package leadline.fleet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import leadline.origin.Origin;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/**
 * A visit to a component: an overhaul, or a test only.
 *
 * @param removedOn the day the item came out
 * @param fittedOn the day an item went in again
 */
public record Overhaul(
    OverhaulId id,
    MachineId machine,
    String component,
    Optional<Integer> unit,
    Optional<Integer> place,
    Optional<String> removedSerial,
    Optional<String> fittedSerial,
    LocalDate removedOn,
    LocalDate fittedOn,
    Optional<RunningHours> machineHours,
    Reason reason,
    Optional<TestResult> testResult,
    Origin origin) {

  public static Overhaul of(SourcedRow row) {
    Cells cells = row.cells();
    String vessel = cells.need(OverhaulLayout.VESSEL);
    LocalDate doneOn = cells.need(OverhaulLayout.DONE_ON);
    return new Overhaul(
        new OverhaulId(vessel, cells.need(OverhaulLayout.OVERHAUL)),
        new MachineId(vessel, cells.need(OverhaulLayout.MACHINE)),
        cells.need(OverhaulLayout.COMPONENT),
        cells.find(OverhaulLayout.UNIT).map(Long::intValue),
        cells.find(OverhaulLayout.PLACE).map(Long::intValue),
        cells.find(OverhaulLayout.REMOVED_SERIAL),
        cells.find(OverhaulLayout.FITTED_SERIAL),
        cells.find(OverhaulLayout.REMOVED_ON).orElse(doneOn),
        cells.find(OverhaulLayout.FITTED_ON).orElse(doneOn),
        cells.find(OverhaulLayout.MACHINE_HOURS),
        cells.need(OverhaulLayout.REASON),
        cells.find(OverhaulLayout.TEST_RESULT),
        row.origin());
  }

  /** The moment of the removal, at which the visit counts. */
  public Instant removedAt() {
    return Days.endOf(removedOn);
  }

  public Instant fittedAt() {
    return Days.endOf(fittedOn);
  }

  /** The overhaul, had it removed that item. */
  public Overhaul withRemovedSerial(String serial) {
    return with(machine, Optional.of(serial), fittedSerial);
  }

  /** The overhaul, had it fitted that item. */
  public Overhaul withFittedSerial(String serial) {
    return with(machine, removedSerial, Optional.of(serial));
  }

  /** The same overhaul, of that machine. */
  public Overhaul of(MachineId other) {
    return with(other, removedSerial, fittedSerial);
  }

  private Overhaul with(MachineId itsMachine, Optional<String> removed, Optional<String> fitted) {
    return new Overhaul(
        id,
        itsMachine,
        component,
        unit,
        place,
        removed,
        fitted,
        removedOn,
        fittedOn,
        machineHours,
        reason,
        testResult,
        origin);
  }
}
