package leadline.history;

import java.time.Duration;
import java.time.Instant;
import leadline.fleet.MachineId;
import leadline.fleet.Reading;
import leadline.origin.Origin;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;

/** What the readings of a log together leave open; they are used. */
public sealed interface LogProblem extends ReadingProblem {

  /** Fractions that are never above .5, as minutes written behind a point make them. */
  record MinutesAsDecimals(MachineId machine, Instant at, long fractions, Origin origin)
      implements LogProblem {
    @Override
    public String record() {
      return machine.machine();
    }

    @Override
    public String evidence() {
      return ("Of %d readings with a fraction not one has more than .5 h, as if hours and minutes"
              + " had been written with a point between. They are used as they stand; each may be"
              + " up to 0.4 h too low.")
          .formatted(fractions);
    }

    @Override
    public String request() {
      return "Say whether the fractions are minutes, and if so send decimal hours.";
    }
  }

  /** The same hours run, to a tenth, as in the row before. */
  record TotalRepeated(
      MachineId machine, Instant since, Instant at, RunningHours written, Origin origin)
      implements LogProblem {
    @Override
    public String evidence() {
      return "The hours run by %s and by %s are the same to a tenth, %s h. Both are counted."
          .formatted(Days.asWritten(since), Days.asWritten(at), written);
    }

    @Override
    public String request() {
      return "Say whether the figure was copied on, and if so send the hours run.";
    }
  }

  /**
   * Hours run after a gap: since the reading before, or in the last of the log's usual intervals.
   *
   * @param usual the days between readings, as this log usually has them
   * @param uncovered the most that was run besides, if they are of the last interval only
   */
  record TotalAfterGap(
      MachineId machine,
      Instant since,
      Instant at,
      RunningHours written,
      long usual,
      RunningHours uncovered,
      Origin origin)
      implements LogProblem {

    static TotalAfterGap of(Reading total, Instant since, TotalRhythm rhythm) {
      return new TotalAfterGap(
          total.machine(),
          since,
          total.at(),
          total.hours(),
          rhythm.usual().toDays(),
          rhythm.uncovered(total, since),
          total.origin());
    }

    @Override
    public String question() {
      return "Do the hours of %s for %s cover the whole time since %s?"
          .formatted(machine.machine(), Days.asWritten(at), Days.asWritten(since));
    }

    @Override
    public String evidence() {
      return ("The log gives %s h run by %s, and no reading since %s, %d days before, where it"
              + " usually has one every %d days. They count for the whole time; if they are of the"
              + " last %d days only, up to %s h are not counted.")
          .formatted(
              written,
              Days.asWritten(at),
              Days.asWritten(since),
              Duration.between(since, at).toDays(),
              usual,
              usual,
              uncovered);
    }

    @Override
    public String request() {
      return "Say so if they cover the whole time; if not, send the hours of the time left out.";
    }
  }
}
