package leadline.fleet;

/** How many positions of a component a machine has. */
public enum PositionsPer implements Written {
  PLACE,
  UNIT,
  MACHINE
}
