package leadline.summary;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Counts by subject and by vessel and model, from which those of every stratum are summed: so the
 * fleet is always the sum of its models and of its vessels.
 *
 * @param <K> the subject of a row within its stratum
 */
final class Strata<K extends Serializable, C extends Counts<C>> implements Serializable {

  private final Map<K, SortedMap<VesselModel, C>> counted = new HashMap<>();

  void add(K subject, VesselModel member, C counts) {
    counted.computeIfAbsent(subject, none -> new TreeMap<>()).merge(member, counts, Counts::plus);
  }

  /** Adds all that the other has counted; the other stays as it is. */
  void merge(Strata<K, C> other) {
    other.counted.forEach(
        (subject, members) -> members.forEach((member, counts) -> add(subject, member, counts)));
  }

  /** The strata that have the subject, by level and name; none where no machine has it. */
  List<Stratum<C>> of(K subject) {
    SortedMap<VesselModel, C> members = counted.getOrDefault(subject, new TreeMap<>());
    List<Stratum<C>> strata = new ArrayList<>();
    for (Level level : Level.values()) {
      SortedMap<String, SortedMap<VesselModel, C>> byName = new TreeMap<>();
      members.forEach(
          (member, counts) ->
              byName
                  .computeIfAbsent(level.stratumOf(member), none -> new TreeMap<>())
                  .put(member, counts));
      byName.forEach((name, group) -> strata.add(new Stratum<>(level, name, group)));
    }
    return strata;
  }
}
