package leadline.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineId;
import leadline.fleet.OverhaulId;
import leadline.fleet.Position;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;

/** Overhauls that should be on record by now. */
public sealed interface OverhaulsMissing extends SilenceProblem {

  /**
   * No overhaul or test of the vessel is on record any more, while a machine runs on.
   *
   * @param last the last of them
   * @param lastOn the day of its removal
   * @param component the one that the vessel overhauls most often
   * @param run the machine's hours since then
   * @param due when these were too many
   */
  record OverhaulsSilent(
      OverhaulId last,
      LocalDate lastOn,
      MachineId machine,
      String component,
      RunningHours run,
      RunningHours interval,
      Instant due,
      Origin origin)
      implements OverhaulsMissing {
    @Override
    public String vessel() {
      return last.vessel();
    }

    @Override
    public String record() {
      return "overhauls";
    }

    @Override
    public Optional<Instant> dueSince() {
      return Optional.of(due);
    }

    @Override
    public String question() {
      return "Why does %s send no overhauls any more?".formatted(vessel());
    }

    @Override
    public String evidence() {
      return ("The last overhaul on record is %s of %s. Since then %s ran %s h, in which each %s of it"
              + " falls due, every %s h.")
          .formatted(last.overhaul(), lastOn, machine.machine(), run, component, interval);
    }

    @Override
    public String request() {
      return "Send the overhauls since then, or say that there was none.";
    }
  }

  /**
   * Positions that ran far beyond the policy interval without an overhaul on record.
   *
   * @param unit none where it is all of the machine's positions of the component
   * @param run the least that any of them ran since the last overhaul on record, or since its
   *     records begin
   * @param since when the first of them ran too long
   */
  record LongPastInterval(
      MachineId machine,
      String component,
      Optional<Integer> unit,
      List<Position> positions,
      RunningHours run,
      RunningHours interval,
      Instant since,
      Origin origin)
      implements OverhaulsMissing {

    public LongPastInterval {
      positions = List.copyOf(positions);
    }

    @Override
    public String vessel() {
      return machine.vessel();
    }

    @Override
    public String record() {
      return machine.machine() + " " + component + unit.map(number -> " unit " + number).orElse("");
    }

    @Override
    public Optional<Instant> dueSince() {
      return Optional.of(since);
    }

    @Override
    public Optional<String> componentUnnamed() {
      return Optional.of(component);
    }

    @Override
    public String question() {
      return "When was each %s of %s last overhauled?"
          .formatted(
              component,
              unit.map(number -> machine.machine() + " unit " + number).orElse(machine.machine()));
    }

    @Override
    public String evidence() {
      return "No overhaul is on record for at least %s h of %s, where one is due every %s h."
          .formatted(
              run,
              unit.isPresent()
                  ? String.join(", ", positions.stream().map(Position::label).toList())
                  : "all %d positions".formatted(positions.size()),
              interval);
    }

    @Override
    public String request() {
      return "Send the overhauls that are missing, or say that there was none.";
    }
  }
}
