package leadline.summary;

import leadline.history.MachineHistory;
import leadline.quantity.Period;

/** Openings of a spring by its age at the removal. */
record SpringCounts(ComponentHours hours, ByAge<OpeningCounts> byAge)
    implements Counts<SpringCounts> {

  static SpringCounts of(MachineHistory history, PartSubject spring, Period period) {
    return new SpringCounts(
        ComponentHours.of(history, spring.component(), period),
        ByAge.of(PartAtOverhaul.each(history, spring, period), OpeningCounts::of));
  }

  @Override
  public SpringCounts plus(SpringCounts other) {
    return new SpringCounts(hours.plus(other.hours), byAge.plus(other.byAge));
  }
}
