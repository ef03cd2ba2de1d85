package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import leadline.quantity.RunningHours;

/** A machine that runs the same hours every day, of which some rest on a repaired reading. */
public final class SteadyHours {

  private static final Instant FIRST = Instant.parse("2000-01-01T00:00:00Z");
  private static final Instant LAST = Instant.parse("2040-01-01T00:00:00Z");

  private SteadyHours() {}

  public static HourSeries of(long hoursADay, long repairedHoursADay) {
    long days = Duration.between(FIRST, LAST).toDays();
    return new HourSeries(
        List.of(
            new HourMark(
                FIRST,
                RunningHours.ZERO,
                HourMark.Slack.NONE,
                HourMark.Doubt.NONE,
                RunningHours.ZERO,
                HourMark.Step.COUNTED),
            new HourMark(
                LAST,
                RunningHours.ofHours(days * hoursADay),
                HourMark.Slack.NONE,
                HourMark.Doubt.NONE.repaired(RunningHours.ofHours(days * repairedHoursADay)),
                RunningHours.ZERO,
                HourMark.Step.ROLLED_OVER)),
        List.of());
  }
}
