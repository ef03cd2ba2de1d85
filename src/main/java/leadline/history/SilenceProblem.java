package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineId;
import leadline.fleet.OverhaulId;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;

/** Records that should be there and are not. */
public sealed interface SilenceProblem extends Problem
    permits OverhaulsMissing,
        SilenceProblem.VesselSilent,
        SilenceProblem.MachineSilent,
        SilenceProblem.MachineNeverRead,
        SilenceProblem.OpenedUnstated {

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
      return "Was part %s opened at these overhauls, and how was it found?".formatted(part);
    }

    @Override
    public String evidence() {
      List<String> names = overhauls.stream().map(OverhaulId::overhaul).limit(NAMED).toList();
      return "Overhauls whose findings leave open whether part %s was opened or how it was found, so that"
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
