package leadline.history;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Component;
import leadline.fleet.Overhaul;
import leadline.fleet.Part;
import leadline.fleet.Position;
import leadline.fleet.Reason;
import leadline.quantity.RunningHours;

/**
 * An overhaul or test, joined to its component and position.
 *
 * @param position none where it is not known
 * @param hours the machine's hours at the removal
 */
record PlacedVisit(
    Overhaul overhaul,
    Component component,
    Optional<Position> position,
    RunningHours hours,
    Standing standing) {

  /** Visits of one moment are taken in the order of their identifiers. */
  static final Comparator<PlacedVisit> IN_TIME =
      Comparator.comparing(PlacedVisit::removedAt)
          .thenComparing(visit -> visit.overhaul().id().overhaul());

  enum Standing {
    /** At the very start of observation: it counts nowhere, but tells what is fitted since. */
    AT_THE_START,
    OBSERVED
  }

  Instant removedAt() {
    return overhaul.removedAt();
  }

  /** Never before the removal. */
  Instant fittedAt() {
    return overhaul.fittedAt().isAfter(removedAt()) ? overhaul.fittedAt() : removedAt();
  }

  /**
   * The serial of the item that was overhauled away from any position, as in a workshop ashore:
   * where the record says no unit and place, and names one item.
   */
  Optional<String> workshopSerial() {
    boolean saysNoPosition =
        position.isEmpty() && overhaul.unit().isEmpty() && overhaul.place().isEmpty();
    Set<String> serials =
        Stream.of(overhaul.removedSerial(), overhaul.fittedSerial())
            .flatMap(Optional::stream)
            .collect(Collectors.toSet());
    return serials.stream().filter(serial -> saysNoPosition && serials.size() == 1).findFirst();
  }

  PlacedVisit withHours(RunningHours instead) {
    return new PlacedVisit(overhaul, component, position, instead, standing);
  }

  boolean isOverhaul() {
    return overhaul.reason().isOverhaul();
  }

  boolean isCountedOverhaul() {
    return isOverhaul() && isObserved();
  }

  boolean isObserved() {
    return standing == Standing.OBSERVED;
  }

  /**
   * Whether a test proves the part's function as it came out. The test after an overhaul speaks of
   * the item after the work.
   */
  boolean provesByTest(Part part) {
    return overhaul.reason() == Reason.TEST_ONLY
        && overhaul.testResult().filter(part.provenBy()::contains).isPresent();
  }

  /** The visit as corrected, if the correction is of its overhaul. */
  PlacedVisit with(Overhaul corrected) {
    return corrected.id().equals(overhaul.id())
        ? new PlacedVisit(corrected, component, position, hours, standing)
        : this;
  }

  PlacedVisit withHoursAtLeast(RunningHours least) {
    return new PlacedVisit(overhaul, component, position, hours.max(least), standing);
  }
}
