package leadline.history;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import leadline.fleet.Item;
import leadline.fleet.Overhaul;
import leadline.fleet.Position;
import leadline.quantity.RunningHours;

/**
 * An item at a position, from fitted to removed.
 *
 * @param to the removal, or the end of what is known of it there
 * @param run hours that the item ran in it; none where that is not known
 */
record Stint(
    Item item,
    Position position,
    Beginning beginning,
    Instant from,
    Instant to,
    Optional<RunningHours> run,
    Ending ending) {

  static final Comparator<Stint> IN_TIME =
      Comparator.comparing(Stint::to)
          .thenComparing(Stint::from)
          .thenComparing(stint -> stint.ending().rank())
          .thenComparing(stint -> stint.ending().name())
          .thenComparing(stint -> stint.position().toString());

  /** How the item came to its position. */
  sealed interface Beginning {

    /** It was there when observation began; its age then is known where it was fitted new. */
    record Original(Optional<RunningHours> ageKnown) implements Beginning {}

    record Fitted(PlacedVisit visit) implements Beginning {}

    /** It came out without being on record as fitted. */
    record Unseen() implements Beginning {}

    /** The overhaul that fitted it, where one did. */
    default Optional<Overhaul> overhaul() {
      return this instanceof Fitted fitted
          ? Optional.of(fitted.visit().overhaul())
          : Optional.empty();
    }

    /** In words, to follow the item's position. */
    default String inWords() {
      if (this instanceof Fitted fitted) {
        return "fitted by overhaul " + fitted.visit().overhaul().id().overhaul();
      }
      return this instanceof Original ? "there from the start" : "never on record as fitted";
    }

    /** The item's age at the beginning, where it is known since new. */
    default Optional<RunningHours> age() {
      return this instanceof Original original ? original.ageKnown() : Optional.empty();
    }
  }

  /** How the item left its position. */
  sealed interface Ending {

    record Removed(PlacedVisit visit) implements Ending {
      @Override
      public int rank() {
        return 0;
      }

      @Override
      public String name() {
        return visit.overhaul().id().overhaul();
      }
    }

    /** Another item came out in its place. */
    record OutOfSight() implements Ending {}

    record StillFitted() implements Ending {}

    /** The overhaul that removed it, where one did. */
    default Optional<Overhaul> overhaul() {
      return this instanceof Removed removed
          ? Optional.of(removed.visit().overhaul())
          : Optional.empty();
    }

    /** In words, to follow the item's position. */
    default String inWords() {
      return overhaul()
          .map(
              removal ->
                  "removed by overhaul %s on %s"
                      .formatted(removal.id().overhaul(), removal.removedOn()))
          .orElse("not on record as removed");
    }

    /** Removals of one moment come before what they leave behind. */
    default int rank() {
      return 1;
    }

    default String name() {
      return "";
    }
  }

  /** Where the item was, by which records. */
  String inWords() {
    return "at %s (%s, %s)".formatted(position, beginning.inWords(), ending.inWords());
  }

  Stint withHoursUnknown() {
    return new Stint(item, position, beginning, from, to, Optional.empty(), ending);
  }

  /** Whether the item was at work there then: an item still fitted is so from its fitting on. */
  boolean isRunningAt(Instant moment) {
    return from.isBefore(moment) && (moment.isBefore(to) || ending instanceof Ending.StillFitted);
  }

  /** Whether one item would have been at two positions at once. */
  boolean overlaps(Stint later) {
    return later.from.isBefore(to);
  }
}
