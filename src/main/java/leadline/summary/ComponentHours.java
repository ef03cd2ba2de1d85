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
 * @param interpolated how many of them lie in long stretches between readings
 * @param least the least that they can have been
 * @param most the most that they can have been
 */
record ComponentHours(
    RunningHours run,
    RunningHours repaired,
    RunningHours interpolated,
    RunningHours least,
    RunningHours most)
    implements Counts<ComponentHours> {

  static final ComponentHours NONE =
      new ComponentHours(
          RunningHours.ZERO,
          RunningHours.ZERO,
          RunningHours.ZERO,
          RunningHours.ZERO,
          RunningHours.ZERO);

  /** Above this share figures are given at both bounds (common practice, no source). */
  private static final double DOUBTFUL = .02;

  static ComponentHours of(MachineHistory history, Component component, Period window) {
    Exposure machine = history.exposureWithin(window);
    long positions = history.machine().positionCount(component);
    return new ComponentHours(
        machine.hours().times(positions),
        machine.repaired().times(positions),
        machine.interpolated().times(positions),
        machine.least().times(positions),
        machine.most().times(positions));
  }

  @Override
  public ComponentHours plus(ComponentHours other) {
    return new ComponentHours(
        run.plus(other.run),
        repaired.plus(other.repaired),
        interpolated.plus(other.interpolated),
        least.plus(other.least),
        most.plus(other.most));
  }

  boolean isNone() {
    return run.tenths() == 0;
  }

  /** Whether so much rests on repair and interpolation that a rate is wanted at both bounds. */
  boolean isDoubtful() {
    return repaired.plus(interpolated).tenths() > DOUBTFUL * run.tenths();
  }

  TableRow.Builder in(TableRow.Builder row) {
    return row.with(EvidenceColumns.EXPOSURE, run.hours())
        .with(EvidenceColumns.REPAIRED_HOURS_SHARE, repairedShare());
  }

  private Optional<Double> repairedShare() {
    return isNone() ? Optional.empty() : Optional.of((double) repaired.tenths() / run.tenths());
  }
}
