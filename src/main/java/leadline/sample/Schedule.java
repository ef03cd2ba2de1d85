package leadline.sample;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Reason;

/**
 * When each position of a machine is due, in tenths turned by it. The positions of one or two units
 * are done at a time; one that broke down has a time of its own.
 */
final class Schedule {

  private static final double UNPLANNED = .02;
  private static final double EARLIEST_UNPLANNED = .2;
  private static final double LATEST_UNPLANNED = .9;

  private static final double MEDIAN = 1.05;
  private static final double SIGMA = .15;

  /** Of the planned: beyond 10,500 h where the interval is 8,000 h. */
  private static final double LATE = .04;

  private static final double LATE_FROM = 10_500 / 8_000.0;
  private static final double LATE_TO = 1.6;

  private static final double TWO_AT_A_TIME = .5;
  private static final double NEARLY_DUE = .15;

  private final double interval;
  private final Draw draw;
  private final Map<Slot, Due> dues = new LinkedHashMap<>();

  record Due(Slot slot, long at, Reason reason) {
    int unit() {
      return slot.position().unit();
    }
  }

  /**
   * @param interval of the component, hours
   */
  Schedule(double interval, Draw draw) {
    this.interval = interval;
    this.draw = draw;
  }

  /**
   * @param mostGone share of the first interval of the unit's positions that may have gone by
   */
  void begin(List<Slot> unit, double mostGone) {
    double left = 1 - draw.between(0, mostGone);
    done(unit, 0);
    unit.forEach(
        slot ->
            dues.computeIfPresent(
                slot, (same, due) -> new Due(slot, (long) (due.at() * left), due.reason())));
  }

  Due soonest() {
    return soonest(dues.values().stream()).orElseThrow();
  }

  /** The positions done together with the one that is due. */
  List<Slot> batch(Due due, long now) {
    if (due.reason() == Reason.CONDITION) {
      return List.of(due.slot());
    }
    Optional<Due> next =
        draw.chance(TWO_AT_A_TIME)
            ? soonest(nearlyDue(now).filter(other -> other.unit() != due.unit()))
            : Optional.empty();
    return nearlyDue(now)
        .filter(
            each ->
                each.unit() == due.unit()
                    || next.filter(other -> other.unit() == each.unit()).isPresent())
        .map(Due::slot)
        .toList();
  }

  /** Of the positions done, those of one unit will be due together, but for a suspect one. */
  void done(List<Slot> slots, long now) {
    Map<Integer, Long> planned = new HashMap<>();
    for (Slot slot : slots) {
      long together =
          planned.computeIfAbsent(slot.position().unit(), unit -> now + tenths(planned()));
      dues.put(
          slot,
          draw.chance(UNPLANNED)
              ? new Due(slot, now + tenths(unplanned()), Reason.CONDITION)
              : new Due(slot, together, Reason.PLANNED));
    }
  }

  private Stream<Due> nearlyDue(long now) {
    return dues.values().stream().filter(due -> due.at() - now < NEARLY_DUE * interval * 10);
  }

  private static Optional<Due> soonest(Stream<Due> dues) {
    return dues.min(Comparator.comparingLong(Due::at));
  }

  private long tenths(double intervals) {
    return Math.round(intervals * interval * 10);
  }

  private double unplanned() {
    return draw.between(EARLIEST_UNPLANNED, LATEST_UNPLANNED);
  }

  private double planned() {
    if (draw.chance(LATE)) {
      return draw.between(LATE_FROM, LATE_TO);
    }
    double factor = LATE_FROM;
    while (factor >= LATE_FROM) {
      factor = MEDIAN * StrictMath.exp(draw.normal(0, SIGMA));
    }
    return factor;
  }
}
