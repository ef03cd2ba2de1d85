package leadline.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineEntry;
import leadline.quantity.Days;
import leadline.quantity.Period;

/**
 * One machine's hours, overhauls, intervals and part lives.
 *
 * @param observed the stretch in which its records are complete and its hours known; none where it
 *     was never observed before the cut-off
 * @param visits the overhauls and tests within the observed stretch, by moment and identifier
 * @param intervals the intervals between overhauls, on both clocks
 * @param positions every position as observation ends, by component, unit and place; none where the
 *     machine was never observed
 */
public record MachineHistory(
    MachineEntry machine,
    HourSeries hours,
    Optional<Period> observed,
    List<Visit> visits,
    List<OverhaulInterval> intervals,
    List<PartLife> lives,
    List<PositionStanding> positions) {

  public MachineHistory {
    visits = List.copyOf(visits);
    intervals = List.copyOf(intervals);
    lives = List.copyOf(lives);
    positions = List.copyOf(positions);
  }

  /**
   * The history as it counts by model: a machine that was re-rated once for each stretch as one
   * model, an interval or a life there where it ended. Positions stand with the last.
   */
  public List<MachineHistory> byModel() {
    List<MachineHistory> stretches = new ArrayList<>();
    Instant from = Instant.MIN;
    for (MachineEntry former : machine.formerly()) {
      Instant until = Days.endOf(former.validTo().orElseThrow());
      stretches.add(within(former, new Period(from, until), List.of()));
      from = until;
    }
    stretches.add(within(machine, new Period(from, Instant.MAX), positions));
    return stretches;
  }

  private MachineHistory within(
      MachineEntry entry, Period stretch, List<PositionStanding> standings) {
    return new MachineHistory(
        entry,
        hours,
        observedWithin(stretch),
        visits.stream().filter(visit -> stretch.contains(visit.at())).toList(),
        intervals.stream().filter(interval -> stretch.contains(interval.until())).toList(),
        lives.stream().filter(life -> stretch.contains(life.until())).toList(),
        standings);
  }

  /** The part of the window in which the machine was observed. */
  public Optional<Period> observedWithin(Period window) {
    return observed.flatMap(window::overlap);
  }

  /** Hours run in the observed part of the window; zero where there is none. */
  public Exposure exposureWithin(Period window) {
    return observedWithin(window).map(part -> hours.exposure(part)).orElse(Exposure.NONE);
  }
}
