package leadline.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulId;
import leadline.history.HourSeries.Bounded;
import leadline.history.OverhaulProblem.HoursDisagree;
import leadline.quantity.RunningHours;

/**
 * By how much the hours that one machine's overhauls state are shifted against its series.
 * Overhauls that one and the same shift would bring within the bounds of the series, give or take
 * the tolerance, are one contradiction of the series, found at the first of them. A shift is in
 * force until an overhaul fits the series without it, or another shift proves to have come in its
 * place by a second overhaul of a later day.
 */
final class HourShifts {

  private final RunningHours tolerance;
  private final List<Shift> shifts = new ArrayList<>();

  /** Oldest first. */
  private List<Shift> inForce = List.of();

  HourShifts(RunningHours tolerance) {
    this.tolerance = tolerance;
  }

  /**
   * Takes the next overhaul in time that states its hours.
   *
   * @param meanings of the figure on the series
   */
  void add(Overhaul overhaul, Bounded series, List<RunningHours> meanings) {
    List<Range> possible =
        meanings.stream().map(meaning -> Range.of(meaning, series, tolerance)).toList();
    if (possible.stream().anyMatch(Range::holdsNone)) {
      inForce = inForce.stream().filter(shift -> shift.and(possible).isPresent()).toList();
      return;
    }
    Optional<Shift> same =
        inForce.stream()
            .filter(shift -> shift.and(possible).isPresent())
            .reduce((older, newer) -> newer);
    if (same.isPresent()) {
      follow(same.get(), overhaul, same.get().and(possible).orElseThrow());
    } else {
      begin(new Shift(overhaul, series, Range.nearest(possible)));
    }
  }

  /** One question for each shift. */
  List<HoursDisagree> problems() {
    return shifts.stream().map(Shift::problem).toList();
  }

  private void begin(Shift shift) {
    shifts.add(shift);
    inForce = new ArrayList<>(inForce);
    inForce.add(shift);
  }

  /**
   * A second overhaul of the same day may have the same slip; of a later day it proves the shift.
   */
  private void follow(Shift shift, Overhaul overhaul, Range range) {
    shift.followers.add(overhaul.id());
    shift.range = range;
    if (overhaul.removedAt().isAfter(shift.first.removedAt())) {
      inForce = List.of(shift);
    }
  }

  /** Shifts from the least to the most. */
  private record Range(RunningHours least, RunningHours most) {

    static Range of(RunningHours figure, Bounded series, RunningHours tolerance) {
      return new Range(
          figure.minus(series.upper()).minus(tolerance),
          figure.minus(series.lower()).plus(tolerance));
    }

    /** That of the meaning which the series is nearest to. */
    static Range nearest(List<Range> ranges) {
      return ranges.stream().min(Comparator.comparing(Range::fromNone)).orElseThrow();
    }

    boolean holdsNone() {
      return !least.isAbove(RunningHours.ZERO) && !most.isNegative();
    }

    private RunningHours fromNone() {
      return least.max(RunningHours.ZERO.minus(most));
    }

    Optional<Range> and(Range other) {
      Range both = new Range(least.max(other.least), most.min(other.most));
      return both.least.isAbove(both.most) ? Optional.empty() : Optional.of(both);
    }
  }

  private static final class Shift {
    private final Overhaul first;
    private final Bounded series;
    private final List<OverhaulId> followers = new ArrayList<>();
    private Range range;

    Shift(Overhaul first, Bounded series, Range range) {
      this.first = first;
      this.series = series;
      this.range = range;
    }

    /** The shifts that these overhauls and one with such possible shifts have in common. */
    Optional<Range> and(List<Range> possible) {
      return possible.stream().map(range::and).flatMap(Optional::stream).findFirst();
    }

    HoursDisagree problem() {
      return new HoursDisagree(
          first.id(),
          first.removedOn(),
          first.machineHours().orElseThrow(),
          series,
          followers,
          first.origin());
    }
  }
}
