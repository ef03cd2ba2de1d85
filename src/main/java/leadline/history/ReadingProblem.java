package leadline.history;

import java.time.Instant;
import leadline.fleet.MachineId;
import leadline.fleet.ReadingKind;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/** A contradiction in a machine's running-hours log. */
public sealed interface ReadingProblem extends Problem
    permits LogProblem,
        ReadingProblem.ImpossibleReading,
        ReadingProblem.CounterGap,
        ReadingProblem.CopiedReadings,
        ReadingProblem.OtherDial,
        ReadingProblem.MixedReading,
        ReadingProblem.ReadingOfAnotherDay,
        ReadingProblem.ReadingsContradict,
        ReadingProblem.CounterChangeUnsaid {

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
   * @param since when the last trusted reading was taken, or {@code at} where there was none before
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
      String what = reading == ReadingKind.TOTAL ? "The total" : "The reading";
      return since.equals(at)
          ? "%s of %s h is left out: those that come after it cannot follow it."
              .formatted(what, written)
          : "%s of %s h is left out: since the last trusted reading of %s %s."
              .formatted(what, written, Days.asWritten(since), whatItMeans());
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

  /** One figure, copied on while the machine ran: the copies are left out. */
  record CopiedReadings(
      MachineId machine, Instant at, Instant to, RunningHours written, Origin origin)
      implements ReadingProblem {
    @Override
    public String evidence() {
      return ("The reading of %s h stands again on every day of the log from %s to %s, and by the"
              + " next one the machine had run for longer than the time since. The copies are left"
              + " out, and the hours between interpolated.")
          .formatted(written, Days.asWritten(at), Days.asWritten(to));
    }

    @Override
    public String request() {
      return "Send the readings of those days or, if none were taken, say so.";
    }
  }

  /** Figures in a row that climb faster than time. */
  record OtherDial(MachineId machine, Instant at, Instant to, long readings, Origin origin)
      implements ReadingProblem {
    @Override
    public String evidence() {
      return ("The %d readings from %s to %s climb by more hours than there were, as a counter of"
              + " revolutions does. They are left out.")
          .formatted(readings, Days.asWritten(at), Days.asWritten(to));
    }

    @Override
    public String request() {
      return "Send what the hours counter showed on those days.";
    }
  }

  /** A counter's reading where hours run belong, or hours run where a reading belongs. */
  record MixedReading(
      MachineId machine, Instant at, ReadingKind reading, RunningHours written, Origin origin)
      implements ReadingProblem {
    @Override
    public String evidence() {
      return (reading == ReadingKind.TOTAL
              ? "The total of %s h is more than the time since the row before, as a counter's"
                  + " reading would be. It is left out."
              : "The reading of %s h is far below those around it, as the hours of the month so far"
                  + " would be. It is left out.")
          .formatted(written);
    }

    @Override
    public String request() {
      return reading == ReadingKind.TOTAL
          ? "Send the hours run since the row before."
          : "Send what the hours counter showed.";
    }
  }

  /** A figure that does not fit its day, and fits another. */
  record ReadingOfAnotherDay(MachineId machine, Instant at, RunningHours written, Origin origin)
      implements ReadingProblem {
    @Override
    public String evidence() {
      return ("The reading of %s h does not fit between those around it, but would fit a day or a"
              + " year earlier or later. It is left out.")
          .formatted(written);
    }

    @Override
    public String request() {
      return "Send the right date of this reading, or the reading of this date.";
    }
  }

  /** Readings of which each fits those around, and that do not fit each other. */
  record ReadingsContradict(
      MachineId machine,
      Instant at,
      RunningHours written,
      Instant otherAt,
      RunningHours other,
      Origin origin)
      implements ReadingProblem {
    @Override
    public String evidence() {
      return ("The readings of %s h on %s and of %s h on %s cannot both be right, and either would"
              + " fit the rest of the log. Both are left out.")
          .formatted(written, Days.asWritten(at), other, Days.asWritten(otherAt));
    }

    @Override
    public String request() {
      return "Send both readings as the log has them.";
    }
  }

  /** The counter fell, and what follows goes on from there. */
  record CounterChangeUnsaid(
      MachineId machine,
      Instant since,
      RunningHours last,
      Instant at,
      RunningHours written,
      Origin origin)
      implements ReadingProblem {
    @Override
    public String evidence() {
      return ("The counter showed %s h on %s and %s h on %s, and the readings since go on from"
              + " there: it is taken for a new counter, begun at zero between the two. Up to %s h"
              + " run on neither are not counted.")
          .formatted(
              last,
              Days.asWritten(since),
              written,
              Days.asWritten(at),
              RunningHours.elapsedBetween(since, at).minus(written).max(RunningHours.ZERO));
    }

    @Override
    public String request() {
      return "Say when the counter was changed, and send the old one's last reading and the new"
          + " one's first as \"replaced\".";
    }
  }
}
