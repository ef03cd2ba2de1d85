package leadline.summary;

import java.util.Optional;
import leadline.fleet.Component;
import leadline.history.Exposure;
import leadline.history.MachineHistory;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/**
 * Hours that a component was exposed under observation: positions times machine hours.
 *
 * @param repaired how many of them rest on repaired readings
 */
record ComponentHours(RunningHours run, RunningHours repaired) implements Counts<ComponentHours> {

  static final ComponentHours NONE = new ComponentHours(RunningHours.ZERO, RunningHours.ZERO);

  static ComponentHours of(MachineHistory history, Component component, Period window) {
    Exposure machine = history.exposureWithin(window);
    long positions = history.machine().positionCount(component);
    return new ComponentHours(
        machine.hours().times(positions), machine.repaired().times(positions));
  }

  @Override
  public ComponentHours plus(ComponentHours other) {
    return new ComponentHours(run.plus(other.run), repaired.plus(other.repaired));
  }

  boolean isNone() {
    return run.tenths() == 0;
  }

  TableRow.Builder in(TableRow.Builder row) {
    return row.with(EvidenceColumns.EXPOSURE, run.hours())
        .with(EvidenceColumns.REPAIRED_HOURS_SHARE, repairedShare());
  }

  private Optional<Double> repairedShare() {
    return isNone() ? Optional.empty() : Optional.of((double) repaired.tenths() / run.tenths());
  }
}
