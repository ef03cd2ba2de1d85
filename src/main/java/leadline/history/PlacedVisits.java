package leadline.history;

import java.util.List;
import java.util.Set;
import leadline.fleet.Position;

/**
 * The visits to one machine.
 *
 * @param visits in time
 * @param overhauledByTheStart positions overhauled before, or just as, observation began
 */
record PlacedVisits(List<PlacedVisit> visits, Set<Position> overhauledByTheStart) {

  List<PlacedVisit> at(Position position) {
    return visits.stream()
        .filter(visit -> visit.position().filter(position::equals).isPresent())
        .toList();
  }

  /** Visits to items that were at no position. */
  List<PlacedVisit> inWorkshop() {
    return visits.stream().filter(visit -> visit.workshopSerial().isPresent()).toList();
  }

  /** Visits to who knows what. */
  List<PlacedVisit> withoutPosition() {
    return visits.stream()
        .filter(visit -> visit.position().isEmpty() && visit.workshopSerial().isEmpty())
        .toList();
  }
}
