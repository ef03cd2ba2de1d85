package leadline.summary;

import static java.util.stream.Collectors.groupingBy;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What overhauls told of a part, by its age at the removal.
 *
 * @param bands only those with an overhaul in them
 * @param unknown of pieces whose age is not known
 */
record ByAge<C extends Counts<C>>(SortedMap<HoursBand, C> bands, C unknown)
    implements Counts<ByAge<C>> {

  static <C extends Counts<C>> ByAge<C> of(
      List<PartAtOverhaul> overhauls, Function<Collection<PartAtOverhaul>, C> count) {
    Map<Optional<HoursBand>, List<PartAtOverhaul>> byBand =
        overhauls.stream()
            .collect(groupingBy(overhaul -> overhaul.state().age().map(HoursBand::of)));
    SortedMap<HoursBand, C> bands = new TreeMap<>();
    byBand.forEach((band, there) -> band.ifPresent(known -> bands.put(known, count.apply(there))));
    return new ByAge<>(bands, count.apply(byBand.getOrDefault(Optional.empty(), List.of())));
  }

  @Override
  public ByAge<C> plus(ByAge<C> other) {
    return new ByAge<>(Counts.sum(bands, other.bands), unknown.plus(other.unknown));
  }

  C all() {
    return bands.values().stream().reduce(unknown, Counts::plus);
  }

  /**
   * By the words of {@link SharedColumns#HOURS_BAND}: all, each band by age, and unknown.
   *
   * @param isAny whether there was an overhaul; without one there is no row of unknown age
   */
  Map<String, C> labelled(Predicate<C> isAny) {
    Map<String, C> labelled = new LinkedHashMap<>();
    labelled.put(HoursBand.ALL, all());
    bands.forEach((band, counts) -> labelled.put(band.label(), counts));
    if (isAny.test(unknown)) {
      labelled.put(HoursBand.UNKNOWN, unknown);
    }
    return labelled;
  }
}
