package leadline.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * The cumulative hazard estimated as the sum of events over those at risk, any cause alike. Source:
 * Nelson 1972, Technometrics 14:945; Aalen 1978, Annals of Statistics 6:701.
 *
 * @param points in time order, one for each time at which a duration ended
 */
public record NelsonAalen(List<Point> points) {

  /**
   * A step of the cumulative hazard.
   *
   * @param time when it steps up, in the unit of the durations
   * @param cumulativeHazard events expected per duration up to the time, 0 or more
   * @param variance of the cumulative hazard, the sum of d / n^2 (Aalen 1978)
   */
  public record Point(double time, double cumulativeHazard, double variance) {}

  /** Makes the points unmodifiable. */
  public NelsonAalen {
    points = List.copyOf(points);
  }

  /** Of all that the tally has counted so far. Source: Nelson 1972; Aalen 1978. */
  public static NelsonAalen of(SurvivalTally<?> tally) {
    List<Point> points = new ArrayList<>();
    double hazard = 0;
    double variance = 0;
    for (RiskSet set : tally.riskSets()) {
      double step = (double) set.events() / set.atRisk();
      hazard += step;
      variance += step / set.atRisk();
      points.add(new Point(set.time(), hazard, variance));
    }
    return new NelsonAalen(points);
  }
}
