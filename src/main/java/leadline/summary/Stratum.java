package leadline.summary;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.function.Predicate;

/**
 * The machines that a row puts together, with what was counted of each group of them.
 *
 * @param name as the level names it: {@code all}, the model, the vessel
 * @param members one or more
 */
record Stratum<C extends Counts<C>>(Level level, String name, SortedMap<VesselModel, C> members)
    implements Serializable {

  C total() {
    return Counts.sum(List.copyOf(members.values()));
  }

  /** How many vessels have a group of which the condition holds. */
  long vesselsWith(Predicate<C> condition) {
    return members.entrySet().stream()
        .filter(member -> condition.test(member.getValue()))
        .map(Map.Entry::getKey)
        .map(VesselModel::vessel)
        .distinct()
        .count();
  }
}
