package leadline.sample;

import leadline.fleet.Written;

/** How a vessel deals with parts that can be left shut at an overhaul. */
public enum OpeningHabit implements Written {
  ALWAYS(.95),
  SOMETIMES(.40),
  NEVER(.02),
  /** Opens what looks suspect: a failed part more often than not, an old one now and then. */
  SUSPECT(.05);

  private static final double CHANCE_IF_FAILED = .70;
  private static final double CHANCE_PER_WEAR = .10;

  private final double chance;

  OpeningHabit(double chance) {
    this.chance = chance;
  }

  /**
   * The chance that the parts are opened.
   *
   * @param wear the oldest part's age over its characteristic life
   */
  double chance(boolean failed, double wear) {
    if (this != SUSPECT) {
      return chance;
    }
    return failed ? CHANCE_IF_FAILED : chance + CHANCE_PER_WEAR * Math.min(1, wear);
  }
}
