package leadline.summary;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.history.MachineHistory;
import leadline.quantity.Period;

/**
 * How a machine ran in the whole months, at most twelve, before its observation ended: running
 * hours a day in all of them together, in the slowest and in the fastest.
 */
record RecentRunning(double mean, double slowest, double fastest) {

  private static final int MONTHS = 12;

  /** None where it was observed for less than a month. */
  static Optional<RecentRunning> of(MachineHistory history) {
    return history.observed().flatMap(observed -> of(history, observed));
  }

  private static Optional<RecentRunning> of(MachineHistory history, Period observed) {
    List<Double> rates = new ArrayList<>();
    Instant start = observed.end();
    for (int months = 1; months <= MONTHS; months++) {
      Instant earlier = monthsBefore(observed.end(), months);
      if (earlier.isBefore(observed.start())) {
        break;
      }
      rates.add(rate(history, new Period(earlier, start)));
      start = earlier;
    }
    if (rates.isEmpty()) {
      return Optional.empty();
    }
    double slowest = rates.stream().min(Double::compare).orElseThrow();
    double fastest = rates.stream().max(Double::compare).orElseThrow();
    double mean = rate(history, new Period(start, observed.end()));
    return Optional.of(
        new RecentRunning(Math.max(slowest, Math.min(fastest, mean)), slowest, fastest));
  }

  private static Instant monthsBefore(Instant moment, int months) {
    return moment.atOffset(ZoneOffset.UTC).minusMonths(months).toInstant();
  }

  private static double rate(MachineHistory history, Period period) {
    double days = Duration.between(period.start(), period.end()).toSeconds() / 86_400.0;
    return history.hours().exposure(period).hours().hours() / days;
  }
}
