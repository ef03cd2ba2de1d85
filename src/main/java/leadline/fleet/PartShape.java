package leadline.fleet;

/** Springs fail by breaking; fits fail by any loss of function. */
public enum PartShape implements Written {
  SPRING,
  FIT
}
