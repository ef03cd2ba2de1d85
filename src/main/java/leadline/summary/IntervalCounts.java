package leadline.summary;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leadline.fleet.Component;
import leadline.fleet.Reason;
import leadline.history.MachineHistory;
import leadline.history.OverhaulInterval;
import leadline.quantity.Period;
import leadline.stats.ObservedTime;
import leadline.stats.SurvivalTally;

/**
 * Intervals between overhauls by what became of them.
 *
 * @param ended those whose start and end were seen, by the reason of the overhaul that ended them
 * @param running those whose start was seen and that still ran at the cut-off
 * @param startUnknown those whose start was not seen, ended or not
 */
record IntervalCounts(
    OverhaulCounts overhauls,
    SortedMap<Reason, LengthCounts> ended,
    LengthCounts running,
    long startUnknown)
    implements Counts<IntervalCounts> {

  static IntervalCounts of(
      MachineHistory history,
      Component component,
      OverhaulInterval.Subject clock,
      Period sinceStart) {
    List<OverhaulInterval> intervals =
        history.intervals().stream()
            .filter(interval -> interval.component().name().equals(component.name()))
            .filter(interval -> interval.subject() == clock)
            .toList();
    SortedMap<Reason, LengthCounts> ended = new TreeMap<>();
    for (Reason reason : Reason.values()) {
      LengthCounts lengths = lengthsOf(intervals, Optional.of(reason));
      if (lengths.count() > 0) {
        ended.put(reason, lengths);
      }
    }
    return new IntervalCounts(
        OverhaulCounts.of(history, component, sinceStart),
        ended,
        lengthsOf(intervals, Optional.empty()),
        intervals.stream().filter(interval -> interval.length().isEmpty()).count());
  }

  @Override
  public IntervalCounts plus(IntervalCounts other) {
    return new IntervalCounts(
        overhauls.plus(other.overhauls),
        Counts.sum(ended, other.ended),
        running.plus(other.running),
        startUnknown + other.startUnknown);
  }

  LengthCounts completed() {
    return ended.values().stream().reduce(LengthCounts.NONE, LengthCounts::plus);
  }

  /** The intervals whose start was seen, for estimates in hours. */
  SurvivalTally<Reason> survival() {
    SurvivalTally<Reason> tally = new SurvivalTally<>();
    ended.forEach(
        (reason, lengths) ->
            lengths
                .byLength()
                .forEach(
                    (length, count) ->
                        tally.add(ObservedTime.ended(length.hours(), reason), count)));
    running
        .byLength()
        .forEach((length, count) -> tally.add(ObservedTime.censored(length.hours()), count));
    return tally;
  }

  private static LengthCounts lengthsOf(
      List<OverhaulInterval> intervals, Optional<Reason> endedBy) {
    return intervals.stream()
        .filter(interval -> interval.endedBy().equals(endedBy))
        .flatMap(interval -> interval.length().stream())
        .collect(LengthCounts.collector());
  }
}
