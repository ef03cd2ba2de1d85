package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineId;
import leadline.fleet.OverhaulId;
import leadline.fleet.Position;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/** Records that should be there and are not. */
public sealed interface SilenceProblem extends Problem {

  /**
   * No machine of the vessel sends readings any more.
   *
   * @param last the last reading of all
   * @param limit the longest silence that its own rhythm explains
   */
  record VesselSilent(String vessel, Instant last, Duration limit, Origin origin)
      implements SilenceProblem {
    @Override
    public String record() {
      return "hours";
    }

    @Override
    public Optional<Instant> dueSince() {
      return Optional.of(last.plus(limit));
    }

    @Override
    public String question() {
      return "Why does %s send no running hours any more?".formatted(vessel);
    }

    @Override
    public String evidence() {
      return lastReading(last, limit);
    }

    @Override
    public String request() {
      return "Send the hours since then or, if the vessel left the fleet, its last day as valid_to.";
    }
  }

  /** A machine sends no readings any more, while another of the vessel does. */
  record MachineSilent(MachineId machine, Instant last, Duration limit, Origin origin)
      implements SilenceProblem {
    @Override
    public String vessel() {
      return machine.vessel();
    }

    @Override
    public String record() {
      return machine.machine() + " hours";
    }

    @Override
    public Optional<Instant> dueSince() {
      return Optional.of(last.plus(limit));
    }

    @Override
    public String question() {
      return "Why are no running hours of %s sent any more?".formatted(machine.machine());
    }

    @Override
    public String evidence() {
      return lastReading(last, limit);
    }

    @Override
    public String request() {
      return "Send the hours since then or, if the machine was taken out, its last day as valid_to.";
    }
  }

  /**
   * A machine of the register of which no reading ever came, while those of others go on.
   *
   * @param since when the others were first read, or the machine's own first day if that was later
   * @param last when any of the others was last read
   * @param due by when it should have been read
   */
  record MachineNeverRead(
      MachineId machine, Instant since, Instant last, Instant due, Origin origin)
      implements SilenceProblem {
    @Override
    public String vessel() {
      return machine.vessel();
    }

    @Override
    public String record() {
      return machine.machine() + " hours";
    }

    @Override
    public Optional<Instant> dueSince() {
      return Optional.of(due);
    }

    @Override
    public String question() {
      return "Why are no running hours of %s sent?".formatted(machine.machine());
    }

    @Override
    public String evidence() {
      return ("The register has %s, and no reading of it ever came; other machines of the vessel"
              + " were read from %s to %s. Its overhauls cannot be counted.")
          .formatted(machine.machine(), Days.asWritten(since), Days.asWritten(last));
    }

    @Override
    public String request() {
      return "Send its hours or, if there is no such machine, its last day as valid_to.";
    }
  }

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
      implements SilenceProblem {
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
      implements SilenceProblem {

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

  /**
   * Findings of a part that leave open whether it was opened, or what was found: one question for
   * all of them.
   *
   * @param overhauls whose findings they are, at least one, by arrival
   * @param origin the first of the findings to arrive
   */
  record OpenedUnstated(
      String vessel, String component, String part, List<OverhaulId> overhauls, Origin origin)
      implements SilenceProblem {

    private static final int NAMED = 12;

    public OpenedUnstated {
      overhauls = List.copyOf(overhauls);
    }

    @Override
    public String record() {
      return component + " " + part;
    }

    @Override
    public String question() {
      return "Was the %s opened at these overhauls, and how was it found?".formatted(part);
    }

    @Override
    public String evidence() {
      List<String> names = overhauls.stream().map(OverhaulId::overhaul).limit(NAMED).toList();
      return "Overhauls whose findings leave open whether the %s was opened or how it was found, so that"
              .formatted(part)
          + " it counts as not inspected: %d (%s%s)."
              .formatted(
                  overhauls.size(),
                  String.join(", ", names),
                  overhauls.size() > NAMED ? " and others" : "");
    }

    @Override
    public String request() {
      return "Send the findings again with opened (yes or no) and, if opened, what was found.";
    }
  }

  private static String lastReading(Instant last, Duration limit) {
    return "The last reading is of %s; by the rhythm until then the next was due within %d days."
        .formatted(Days.asWritten(last), limit.toDays());
  }
}
