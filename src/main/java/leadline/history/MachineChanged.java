package leadline.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Reading;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;

/**
 * A machine that the register has as another model from a day on, without saying of both when the
 * machine was new: re-rated, or replaced.
 *
 * @param lastDay as the former model
 * @param former the row of the former model
 */
public record MachineChanged(
    MachineId machine, String was, String is, LocalDate lastDay, Origin former, Origin origin)
    implements Problem {

  /** The changes that readings of the machine, up to the cut-off, lie around. */
  static List<MachineChanged> among(VesselRecords records, Instant cutOff) {
    List<MachineChanged> changes = new ArrayList<>();
    for (MachineEntry machine : records.machines()) {
      List<MachineEntry> rows = new ArrayList<>(machine.formerly());
      rows.add(machine);
      for (int i = 1; i < rows.size(); i++) {
        MachineEntry before = rows.get(i - 1);
        MachineEntry after = rows.get(i);
        if (isPresumedOne(before, after)
            && hasReadingsAround(lastDay(before), readings(machine, records, cutOff))) {
          changes.add(of(before, after));
        }
      }
    }
    return changes;
  }

  private static MachineChanged of(MachineEntry before, MachineEntry after) {
    return new MachineChanged(
        before.id(),
        before.model(),
        after.model(),
        lastDay(before),
        before.origin(),
        after.origin());
  }

  private static boolean isPresumedOne(MachineEntry before, MachineEntry after) {
    return !before.model().equals(after.model())
        && (before.inServiceOn().isEmpty() || after.inServiceOn().isEmpty());
  }

  private static List<Instant> readings(
      MachineEntry machine, VesselRecords records, Instant cutOff) {
    return records.readings().stream()
        .filter(reading -> reading.machine().equals(machine.id()))
        .map(Reading::at)
        .filter(at -> !at.isAfter(cutOff))
        .toList();
  }

  private static boolean hasReadingsAround(LocalDate lastDay, List<Instant> readings) {
    Instant change = Days.endOf(lastDay);
    return readings.stream().anyMatch(change::isAfter)
        && readings.stream().anyMatch(change::isBefore);
  }

  private static LocalDate lastDay(MachineEntry former) {
    return former.validTo().orElseThrow();
  }

  @Override
  public String vessel() {
    return machine.vessel();
  }

  @Override
  public String record() {
    return machine.machine() + " " + lastDay.plusDays(1);
  }

  @Override
  public List<Origin> origins() {
    return List.of(former, origin);
  }

  @Override
  public String question() {
    return "Was %s re-rated from %s to %s on %s, or is it another machine since?"
        .formatted(machine.machine(), was, is, lastDay.plusDays(1));
  }

  @Override
  public String evidence() {
    return ("The register has %s as model %s to %s and as model %s from then on, and does not say of"
            + " both when the machine was new. It is taken for one machine, whose parts keep their"
            + " hours.")
        .formatted(machine.machine(), was, lastDay, is);
  }

  @Override
  public String request() {
    return "Send both rows of machines with in_service_on: the same day if it was re-rated, each its"
        + " own if it was replaced.";
  }
}
