package leadline.history;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.fleet.Item;
import leadline.fleet.OverhaulId;
import leadline.fleet.Part;
import leadline.fleet.Position;
import leadline.quantity.RunningHours;

/**
 * A position as observation of its machine ends.
 *
 * @param item none where what came out last was not fitted again
 * @param run hours that the machine ran since {@code since}
 * @param shut the parts of the item that nothing but opening tells of, in the catalogue's order
 * @param parts every part of the item, in the catalogue's order; none where there is no item
 */
public record PositionStanding(
    Component component,
    Position position,
    Optional<Item> item,
    Since since,
    RunningHours run,
    List<ShutPart> shut,
    List<PartStanding> parts) {

  public PositionStanding {
    shut = List.copyOf(shut);
    parts = List.copyOf(parts);
  }

  /** From when on its running is counted. */
  public sealed interface Since {

    Instant at();

    record Overhaul(OverhaulId overhaul, Instant at) implements Since {}

    /** It was new on the machine's first day in service and not overhauled since. */
    record New(Instant at) implements Since {}

    /** No overhaul is on record: observation began then, and the hours run are the least. */
    record Unknown(Instant at) implements Since {}

    /** Whether the hours run are those since the last overhaul, or since new. */
    default boolean isKnown() {
      return !(this instanceof Unknown);
    }
  }

  /**
   * A part of the item at a position, as last opened with its condition stated, or renewed.
   *
   * @param opened none where that is not on record since the item came into sight
   * @param run hours that the item ran since then, or since it came into sight
   */
  public record ShutPart(Part part, Optional<Instant> opened, RunningHours run) {}

  PositionStanding with(List<ShutPart> closed, List<PartStanding> fitted) {
    return new PositionStanding(component, position, item, since, run, closed, fitted);
  }

  /**
   * @param stints of the position, in time
   * @param newAt the machine's hours when the position's original item was new; none where that is
   *     not known
   */
  static PositionStanding of(
      Component component,
      Position position,
      MachineLog machine,
      List<Stint> stints,
      Optional<RunningHours> newAt) {
    List<PlacedVisit> overhauls = PositionIntervals.overhauls(stints);
    Since since =
        newAt
            .<Since>map(hours -> new Since.New(machine.start()))
            .orElseGet(() -> new Since.Unknown(machine.start()));
    RunningHours from = newAt.orElseGet(() -> machine.hoursAt(machine.start()));
    if (!overhauls.isEmpty()) {
      PlacedVisit last = overhauls.get(overhauls.size() - 1);
      since = new Since.Overhaul(last.overhaul().id(), last.removedAt());
      from = last.hours();
    }
    return new PositionStanding(
        component,
        position,
        fitted(stints),
        since,
        machine.hoursAt(machine.end()).max(from).minus(from),
        List.of(),
        List.of());
  }

  private static Optional<Item> fitted(List<Stint> stints) {
    return stints.stream()
        .filter(stint -> stint.ending() instanceof Stint.Ending.StillFitted)
        .map(Stint::item)
        .findFirst();
  }
}
