package leadline.summary;

import leadline.fleet.Written;

/** What a row's figures may be used for. */
public enum Verdict implements Written {
  OK("Five events or more stand behind the figures; their limits say how sure they are."),
  TOO_FEW("Fewer than five events: no ranking, no shape. Read the limits, not the figure."),
  INSUFFICIENT("Nothing to divide by: the row has no figures."),
  SELECTIVE_OPENING(
      "Opening is not routine here: the share found failed is that of the openings made."),
  WRONG_CLOCK("The part does not age by the hours by which the row is drawn up.");

  private static final long ENOUGH_EVENTS = 5;

  private final String meaning;

  Verdict(String meaning) {
    this.meaning = meaning;
  }

  /** What it tells the reader of a row. */
  public String meaning() {
    return meaning;
  }

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
