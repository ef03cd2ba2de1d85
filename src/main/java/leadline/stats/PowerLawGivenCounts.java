package leadline.stats;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * The shape of a power-law process given how many events each unit had: then ln(T / t) of events t
 * of units observed from 0 to T are independent exponential with rate beta, whatever lambda is, and
 * exact statements follow. Source: Crow 1974, Reliability and Biometry, SIAM, 379; Bain and
 * Engelhardt 1980, Technometrics 22:421; MIL-HDBK-189 1981, appendix C; IEC 61164.
 */
public final class PowerLawGivenCounts {

  private final int events;
  private final double[] shares;
  private final double sumOfLogs;
  private final List<EventHistory> units;

  private PowerLawGivenCounts(List<EventHistory> units, double[] shares) {
    this.units = units;
    this.shares = shares;
    this.events = units.stream().mapToInt(unit -> unit.events().size()).sum();
    this.sumOfLogs = Arrays.stream(shares).map(share -> -Math.log(share)).sum();
  }

  /**
   * Of these units; empty where one was not observed from 0 on, or no event but those that ended
   * observation came before a unit's end.
   */
  public static Optional<PowerLawGivenCounts> of(List<EventHistory> units, Truncation truncation) {
    double[] shares =
        units.stream()
            .flatMapToDouble(
                unit -> truncation.telling(unit).stream().mapToDouble(event -> event / unit.end()))
            .sorted()
            .toArray();
    boolean fromZero = units.stream().allMatch(unit -> unit.start() == 0);
    return fromZero && shares.length > 0 && shares[0] < 1
        ? Optional.of(new PowerLawGivenCounts(List.copyOf(units), shares))
        : Optional.empty();
  }

  /**
   * The shape without bias, (m - 1) / sum ln(T / t) over the m events that did not end observation:
   * with one end for all, the maximum-likelihood shape times (n - 1) / n after a set time, and for
   * a single unit (n - 2) / n after a failure. Empty with one such event.
   */
  public OptionalDouble unbiasedShape() {
    return shares.length > 1
        ? OptionalDouble.of((shares.length - 1) / sumOfLogs)
        : OptionalDouble.empty();
  }

  /** Lambda that makes the expected events of all units those seen, given the unbiased shape. */
  public OptionalDouble lambdaOfUnbiasedShape() {
    OptionalDouble shape = unbiasedShape();
    return shape.isEmpty()
        ? shape
        : OptionalDouble.of(
            events
                / units.stream()
                    .mapToDouble(unit -> Math.pow(unit.end(), shape.getAsDouble()))
                    .sum());
  }

  /**
   * The time between events of one unit at an age, with the unbiased shape, in the unit of time.
   * Empty with one event. Source: IEC 61164.
   *
   * @param age more than 0
   */
  public OptionalDouble meanTimeOfUnbiasedShapeAt(double age) {
    OptionalDouble shape = unbiasedShape();
    OptionalDouble lambda = lambdaOfUnbiasedShape();
    return shape.isEmpty() || lambda.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            Math.pow(age, 1 - shape.getAsDouble()) / (lambda.getAsDouble() * shape.getAsDouble()));
  }

  /** Exact two-sided limits of the shape: chi-squared quantiles of 2 m over 2 sum ln(T / t). */
  public Limits shapeLimits(Confidence confidence) {
    double tail = confidence.eachTail();
    return new Limits(
        Quantiles.gamma(shares.length, tail) / sumOfLogs,
        Quantiles.gamma(shares.length, 1 - tail) / sumOfLogs);
  }

  /**
   * The Cramer-von Mises distance between (t / T)^beta, with the unbiased shape, and uniform
   * spacing: large when the process is no power law. Empty with one event. Source: MIL-HDBK-189
   * 1981, appendix C; IEC 61164.
   */
  public OptionalDouble cramerVonMises() {
    return shares.length > 1
        ? OptionalDouble.of(distance(shares, sumOfLogs))
        : OptionalDouble.empty();
  }

  /**
   * The chance of a distance as large if the process is a power law, by drawing such processes: it
   * depends on the number of events alone. Empty with one event.
   *
   * @param draws how many, 1 or more
   * @param start of the sequence of random numbers; the same start gives the same chance
   */
  public OptionalDouble cramerVonMisesP(int draws, long start) {
    OptionalDouble seen = cramerVonMises();
    if (seen.isEmpty()) {
      return seen;
    }
    SplittableRandom random = new SplittableRandom(start);
    int asLarge = 1;
    for (int draw = 0; draw < draws; draw++) {
      double[] drawn = random.doubles(shares.length).map(value -> 1 - value).sorted().toArray();
      double logs = Arrays.stream(drawn).map(share -> -Math.log(share)).sum();
      asLarge += distance(drawn, logs) >= seen.getAsDouble() ? 1 : 0;
    }
    return OptionalDouble.of(asLarge / (draws + 1.0));
  }

  private static double distance(double[] shares, double sumOfLogs) {
    int count = shares.length;
    double shape = (count - 1) / sumOfLogs;
    double distance = 1 / (12.0 * count);
    for (int index = 0; index < count; index++) {
      double difference = Math.pow(shares[index], shape) - (2 * index + 1) / (2.0 * count);
      distance += difference * difference;
    }
    return distance;
  }
}
