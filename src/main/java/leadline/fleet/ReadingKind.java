package leadline.fleet;

/**
 * What an hours row states: a meter reading, the hours run since the reading before, or the first
 * reading of a new counter.
 */
public enum ReadingKind implements Written {
  COUNTER,
  TOTAL,
  REPLACED
}
