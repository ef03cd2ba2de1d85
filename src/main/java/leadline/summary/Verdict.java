package leadline.summary;

import leadline.fleet.Written;

/** What a row's figures may be used for. */
public enum Verdict implements Written {
  OK,
  /** Fewer than five events: no ranking, no shape. */
  TOO_FEW,
  /** Nothing to divide by: the row has no figures. */
  INSUFFICIENT,
  /** Opening is not routine here, so the share found failed is that of the openings made. */
  SELECTIVE_OPENING,
  /** The part does not age by the hours by which the row is drawn up. */
  WRONG_CLOCK;

  private static final long ENOUGH_EVENTS = 5;

  /**
   * @param base what the events are divided by or taken from
   */
  static Verdict of(long base, long events) {
    if (base == 0) {
      return INSUFFICIENT;
    }
    return events < ENOUGH_EVENTS ? TOO_FEW : OK;
  }
}
