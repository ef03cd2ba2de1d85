package leadline.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.quantity.RunningHours;
import leadline.summary.DuePosition.Standing;

/**
 * The positions of one machine that can be overhauled together: from the one due first on, all that
 * fall due within a window of running hours; then from the next one on. Those overdue are due now.
 */
final class DueGroups {

  static final RunningHours WINDOW = RunningHours.ofHours(500);

  private final Map<DuePosition, Group> groups = new HashMap<>();

  /** A group by its number on the machine, from 1, and the positions in it. */
  record Group(int number, int positions) {}

  /**
   * @param positions all of one machine
   */
  DueGroups(List<DuePosition> positions) {
    List<DuePosition> first =
        positions.stream()
            .filter(position -> left(position).isPresent())
            .sorted(Comparator.comparing(position -> left(position).orElseThrow()))
            .toList();
    int number = 0;
    for (int from = 0; from < first.size(); ) {
      RunningHours until = left(first.get(from)).orElseThrow().plus(WINDOW);
      List<DuePosition> together = new ArrayList<>();
      for (int i = from; i < first.size(); i++) {
        if (!left(first.get(i)).orElseThrow().isAbove(until)) {
          together.add(first.get(i));
        }
      }
      Group group = new Group(++number, together.size());
      together.forEach(position -> groups.put(position, group));
      from += together.size();
    }
  }

  /** None where it is unknown when the position falls due. */
  Optional<Group> of(DuePosition position) {
    return Optional.ofNullable(groups.get(position));
  }

  private static Optional<RunningHours> left(DuePosition position) {
    return position.standing() == Standing.OVERDUE
        ? Optional.of(RunningHours.ZERO)
        : position.remaining();
  }
}
