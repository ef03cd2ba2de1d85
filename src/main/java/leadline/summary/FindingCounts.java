package leadline.summary;

import static leadline.summary.OpeningCounts.count;

import java.util.List;
import leadline.history.MachineHistory;
import leadline.quantity.Period;

/**
 * What overhauls told of a part.
 *
 * @param unstated overhauls with a finding that leaves open whether the part was opened
 * @param rejected renewed on condition though still working
 */
record FindingCounts(
    ComponentHours hours, OpeningCounts openings, long unstated, long rejected, long renewed)
    implements Counts<FindingCounts> {

  static FindingCounts of(MachineHistory history, PartSubject subject, Period period) {
    List<PartAtOverhaul> overhauls = PartAtOverhaul.each(history, subject, period);
    return new FindingCounts(
        ComponentHours.of(history, subject.component(), period),
        OpeningCounts.of(overhauls),
        count(overhauls, PartAtOverhaul::isUnstated),
        count(overhauls, overhaul -> overhaul.state().isRejected()),
        count(overhauls, overhaul -> overhaul.state().isRenewed()));
  }

  @Override
  public FindingCounts plus(FindingCounts other) {
    return new FindingCounts(
        hours.plus(other.hours),
        openings.plus(other.openings),
        unstated + other.unstated,
        rejected + other.rejected,
        renewed + other.renewed);
  }
}
