package leadline.fleet;

/** What ages a part. Without that counter its lives in hours are on the wrong clock. */
public enum Clock implements Written {
  HOURS,
  MONTHS,
  STARTS
}
