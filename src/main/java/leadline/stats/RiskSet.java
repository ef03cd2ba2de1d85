package leadline.stats;

import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Those watched at a time when at least one duration ended.
 *
 * @param atRisk entered before the time, and neither ended nor last seen before it
 * @param endedBy how many ended at the time, by cause
 */
record RiskSet<C>(double time, long atRisk, NavigableMap<C, Long> endedBy) {

  /** Copies the counts, which go on changing while the tally is added to. */
  RiskSet {
    endedBy = new TreeMap<>(endedBy);
  }

  long events() {
    return endedBy.values().stream().mapToLong(Long::longValue).sum();
  }
}
