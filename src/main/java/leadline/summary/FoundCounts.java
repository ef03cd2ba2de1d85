package leadline.summary;

import java.util.Collection;
import java.util.SortedMap;
import java.util.TreeMap;
import leadline.fleet.FoundWord;

/**
 * In which conditions overhauls found a part, of those that opened it.
 *
 * @param times by word; only those found at all. A part may be found in several conditions.
 */
record FoundCounts(OpeningCounts openings, SortedMap<FoundWord, Long> times)
    implements Counts<FoundCounts> {

  static FoundCounts of(Collection<PartAtOverhaul> overhauls) {
    SortedMap<FoundWord, Long> times = new TreeMap<>();
    overhauls.stream()
        .flatMap(overhaul -> overhaul.state().found().stream())
        .forEach(word -> times.merge(word, 1L, Long::sum));
    return new FoundCounts(OpeningCounts.of(overhauls), times);
  }

  @Override
  public FoundCounts plus(FoundCounts other) {
    SortedMap<FoundWord, Long> sum = new TreeMap<>(times);
    other.times.forEach((word, count) -> sum.merge(word, count, Long::sum));
    return new FoundCounts(openings.plus(other.openings), sum);
  }

  long times(FoundWord word) {
    return times.getOrDefault(word, 0L);
  }
}
