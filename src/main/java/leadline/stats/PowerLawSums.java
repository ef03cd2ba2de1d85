package leadline.stats;

import java.util.List;

/** What the likelihood of a power-law process needs, with times as shares of the latest end. */
final class PowerLawSums {

  private final List<EventHistory> units;
  private final int events;
  private final double latestEnd;
  private final double sumOfLogs;

  PowerLawSums(List<EventHistory> units) {
    this.units = List.copyOf(units);
    latestEnd =
        units.stream()
            .mapToDouble(EventHistory::end)
            .max()
            .orElseThrow(() -> new IllegalArgumentException("no unit"));
    events = units.stream().mapToInt(unit -> unit.events().size()).sum();
    double sum = 0;
    for (EventHistory unit : units) {
      for (double event : unit.events()) {
        sum += Math.log(event / latestEnd);
      }
    }
    sumOfLogs = sum;
  }

  int events() {
    return events;
  }

  boolean allEventsAtLatestEnd() {
    return sumOfLogs == 0;
  }

  /** The slope of the log-likelihood along the shape, lambda at its best: it falls with shape. */
  double score(double shape) {
    return events / shape + sumOfLogs - events * moment(shape, 1) / moment(shape, 0);
  }

  /** The limit of the slope as the shape falls to 0. */
  double scoreTowardsZero() {
    double logs = 0;
    double squares = 0;
    for (EventHistory unit : units) {
      if (unit.start() == 0) {
        return Double.POSITIVE_INFINITY;
      }
      double end = Math.log(unit.end() / latestEnd);
      double start = Math.log(unit.start() / latestEnd);
      logs += end - start;
      squares += (end - start) * (end + start) / 2;
    }
    return sumOfLogs - events * squares / logs;
  }

  /** The limit of the log-likelihood as the shape falls to 0, of units observed from later on. */
  double logLikelihoodTowardsZero() {
    double logs = 0;
    for (EventHistory unit : units) {
      logs += Math.log(unit.end()) - Math.log(unit.start());
    }
    return events * (Math.log(events / (logs * latestEnd)) - 1) - sumOfLogs;
  }

  double logLambda(double shape) {
    return Math.log(events / moment(shape, 0)) - shape * Math.log(latestEnd);
  }

  double logLikelihood(double shape) {
    return events * (Math.log(events / moment(shape, 0)) + Math.log(shape / latestEnd) - 1)
        + (shape - 1) * sumOfLogs;
  }

  /** The observed information of the log shape, lambda at its best. */
  double information(double shape) {
    double mean = moment(shape, 1) / moment(shape, 0);
    double spread = moment(shape, 2) / moment(shape, 0) - mean * mean;
    return events * (1 + shape * shape * spread);
  }

  /** The sum over units of T^shape (ln T)^power less the same of the start. */
  private double moment(double shape, int power) {
    double sum = 0;
    for (EventHistory unit : units) {
      sum += term(unit.end() / latestEnd, shape, power);
      sum -= unit.start() == 0 ? 0 : term(unit.start() / latestEnd, shape, power);
    }
    return sum;
  }

  private static double term(double time, double shape, int power) {
    return Math.pow(time, shape) * Math.pow(Math.log(time), power);
  }
}
