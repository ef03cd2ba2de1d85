package leadline.summary;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leadline.history.MachineHistory;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/**
 * Openings of a spring by its age at the removal.
 *
 * @param byAge only bands with an overhaul in them
 * @param ageUnknown those of springs whose age is not known
 */
record SpringCounts(
    ComponentHours hours, SortedMap<HoursBand, OpeningCounts> byAge, OpeningCounts ageUnknown)
    implements Counts<SpringCounts> {

  static SpringCounts of(MachineHistory history, PartSubject spring, Period period) {
    Map<Optional<HoursBand>, List<PartAtOverhaul>> byBand =
        PartAtOverhaul.each(history, spring, period).stream()
            .collect(Collectors.groupingBy(overhaul -> bandOf(overhaul.state().age())));
    SortedMap<HoursBand, OpeningCounts> byAge = new TreeMap<>();
    byBand.forEach(
        (band, there) -> band.ifPresent(known -> byAge.put(known, OpeningCounts.of(there))));
    List<PartAtOverhaul> ageUnknown = byBand.getOrDefault(Optional.empty(), List.of());
    return new SpringCounts(
        ComponentHours.of(history, spring.component(), period),
        byAge,
        OpeningCounts.of(ageUnknown));
  }

  @Override
  public SpringCounts plus(SpringCounts other) {
    return new SpringCounts(
        hours.plus(other.hours), Counts.sum(byAge, other.byAge), ageUnknown.plus(other.ageUnknown));
  }

  OpeningCounts all() {
    return byAge.values().stream().reduce(ageUnknown, OpeningCounts::plus);
  }

  private static Optional<HoursBand> bandOf(Optional<RunningHours> age) {
    return age.map(HoursBand::of);
  }
}
