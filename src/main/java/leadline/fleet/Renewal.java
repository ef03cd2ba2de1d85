package leadline.fleet;

/** Whether a part is renewed on its condition, or at every overhaul whatever its condition. */
public enum Renewal implements Written {
  ON_CONDITION,
  ROUTINE
}
