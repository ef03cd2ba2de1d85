package leadline.history;

import java.time.Instant;
import leadline.fleet.MachineId;
import leadline.fleet.ReadingKind;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/** A contradiction in a machine's running-hours log. */
public sealed interface ReadingProblem extends Problem {

  MachineId machine();

  /** When the reading was taken. */
  Instant at();

  @Override
  default String vessel() {
    return machine().vessel();
  }

  @Override
  default String record() {
    return machine().machine() + " " + Days.asWritten(at());
  }

  @Override
  default String question() {
    return "What did the counter of %s show on %s?"
        .formatted(machine().machine(), Days.asWritten(at()));
  }

  /**
   * A reading left out, since the machine cannot have run so.
   *
   * @param since when the last trusted reading was taken
   * @param increment hours that it would mean were run since; negative where the series would fall
   */
  record ImpossibleReading(
      MachineId machine,
      Instant at,
      ReadingKind reading,
      RunningHours written,
      Instant since,
      RunningHours increment,
      Origin origin)
      implements ReadingProblem {
    @Override
    public String evidence() {
      return "%s of %s h is left out: since the last trusted reading of %s %s."
          .formatted(
              reading == ReadingKind.TOTAL ? "The total" : "The reading",
              written,
              Days.asWritten(since),
              whatItMeans());
    }

    @Override
    public String request() {
      return reading == ReadingKind.TOTAL
          ? "Send the hours as the log has them."
          : "Send the reading as the log has it or, if the counter was changed, the new counter's"
              + " first reading as \"replaced\".";
    }

    private String whatItMeans() {
      return increment.isNegative()
          ? "the hours would have fallen by %s".formatted(RunningHours.ZERO.minus(increment))
          : "the machine would have run %s h in %s h of time"
              .formatted(increment, RunningHours.elapsedBetween(since, at));
    }
  }

  /**
   * A new counter, with hours before its first reading that no counter shows.
   *
   * @param since when the old counter was last read
   */
  record CounterGap(MachineId machine, Instant since, Instant at, Origin origin)
      implements ReadingProblem {
    @Override
    public String evidence() {
      return ("The counter was changed, and between the last reading of the old one on %s and the"
              + " first of the new one up to %s h may have been run that are not counted.")
          .formatted(Days.asWritten(since), RunningHours.elapsedBetween(since, at));
    }

    @Override
    public String request() {
      return "Send the old counter's last reading.";
    }
  }
}
