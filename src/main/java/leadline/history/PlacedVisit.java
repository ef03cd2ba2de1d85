package leadline.history;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
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

  boolean isOverhaul() {
    return overhaul.reason().isOverhaul();
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
