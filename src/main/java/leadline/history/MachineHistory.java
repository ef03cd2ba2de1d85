package leadline.history;

import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineEntry;
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

  /** The part of the window in which the machine was observed. */
  public Optional<Period> observedWithin(Period window) {
    return observed.flatMap(window::overlap);
  }

  /** Hours run in the observed part of the window; zero where there is none. */
  public Exposure exposureWithin(Period window) {
    return observedWithin(window).map(part -> hours.exposure(part)).orElse(Exposure.NONE);
  }
}
