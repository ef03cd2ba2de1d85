package leadline.stats;

/**
 * What a duration adds to observed less expected ends: [S(l) log S~(l) - S(u) log S~(u)] / [S(l) -
 * S(u)] for a duration in (l, u], where S is the nonparametric estimate and -log S~ the sum of its
 * hazards. Source: Sun 1996, Stat. Med. 15:1387; Fay and Shaw 2010, J. Stat. Software 36(2),
 * section 3.
 */
final class LogRankScores {

  private final InnermostIntervals intervals;
  private final double[] survival;
  private final double[] weightedLog;

  LogRankScores(Turnbull pooled) {
    intervals = pooled.intervals();
    double[] after = pooled.survivalAfterEach();
    survival = new double[after.length + 1];
    weightedLog = new double[after.length + 1];
    survival[0] = 1;
    double hazard = 0;
    for (int index = 0; index < after.length; index++) {
      survival[index + 1] = after[index];
      hazard += survival[index] > 0 ? (survival[index] - after[index]) / survival[index] : 0;
      weightedLog[index + 1] = -after[index] * hazard;
    }
  }

  double of(ObservedInterval duration) {
    int from = intervals.firstWithin(duration);
    int to = intervals.lastWithin(duration) + 1;
    return (weightedLog[from] - weightedLog[to]) / (survival[from] - survival[to]);
  }
}
