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
 * the tolerance, are one contradiction of the series, found at the first of them. A second one of a
 * later day proves the shift. It is in force until an overhaul fits the series and not the shift,
 * or until another shift is proven.
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
   * Takes the next overhaul in time that states its hours, and gives these as they are trusted:
   * none where the series does not admit them, and none where they may as well be shifted as those
   * before.
   *
   * @param meanings of the figure on the series
   */
  Optional<RunningHours> trusted(Overhaul overhaul, Bounded series, List<RunningHours> meanings) {
    List<Range> possible =
        meanings.stream().map(meaning -> Range.of(meaning, series, tolerance)).toList();
    List<Shift> same = inForce.stream().filter(shift -> shift.and(possible).isPresent()).toList();
    Optional<RunningHours> fitting =
        meanings.stream().filter(meaning -> series.admits(meaning, tolerance)).findFirst();
    if (fitting.isEmpty()) {
      if (same.isEmpty()) {
        begin(new Shift(overhaul, series, Range.nearest(possible)));
      } else {
        follow(same.get(same.size() - 1), overhaul, possible);
      }
      return Optional.empty();
    }
    Optional<Shift> proven = same.stream().filter(Shift::isProven).findFirst();
    if (proven.isPresent()) {
      proven.get().followers.add(overhaul.id());
      return Optional.empty();
    }
    inForce = same;
    return fitting;
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

  /** A second overhaul of the same day may have the same slip; one of a later day ends others. */
  private void follow(Shift shift, Overhaul overhaul, List<Range> possible) {
    shift.range = shift.and(possible).orElseThrow();
    shift.followers.add(overhaul.id());
    shift.last = overhaul;
    if (shift.isProven()) {
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
    private Overhaul last;
    private Range range;

    Shift(Overhaul first, Bounded series, Range range) {
      this.first = first;
      this.last = first;
      this.series = series;
      this.range = range;
    }

    /** By an overhaul of a later day that the series does not admit either. */
    boolean isProven() {
      return last.removedAt().isAfter(first.removedAt());
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
