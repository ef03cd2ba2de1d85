package leadline.quantity;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;

/**
 * Hours that a machine turned, or a difference of such, held as a whole number of tenths so that
 * sums are exact in any order.
 *
 * @param tenths tenths of an hour; negative only as a difference
 */
public record RunningHours(long tenths) implements Comparable<RunningHours>, Serializable {

  public static final RunningHours ZERO = new RunningHours(0);

  private static final long SECONDS_IN_A_TENTH = 360;

  public static RunningHours ofTenths(long tenths) {
    return tenths == 0 ? ZERO : new RunningHours(tenths);
  }

  public static RunningHours ofHours(long hours) {
    return ofTenths(Math.multiplyExact(hours, 10));
  }

  /** Hours as a decimal number, rounded half up to a tenth. */
  public static RunningHours ofHours(BigDecimal hours) {
    return ofTenths(hours.movePointRight(1).setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  /** The time elapsed, as if the machine turned all of it; rounded up to a tenth. */
  public static RunningHours elapsedBetween(Instant start, Instant end) {
    long seconds = Duration.between(start, end).toSeconds();
    return ofTenths(-Math.floorDiv(-seconds, SECONDS_IN_A_TENTH));
  }

  public RunningHours plus(RunningHours other) {
    return ofTenths(Math.addExact(tenths, other.tenths));
  }

  public RunningHours minus(RunningHours other) {
    return ofTenths(Math.subtractExact(tenths, other.tenths));
  }

  /** How far apart the two are; never negative. */
  public RunningHours differenceTo(RunningHours other) {
    return max(other).minus(min(other));
  }

  public RunningHours times(long count) {
    return ofTenths(Math.multiplyExact(tenths, count));
  }

  public RunningHours max(RunningHours other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public RunningHours min(RunningHours other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isNegative() {
    return tenths < 0;
  }

  public boolean isAbove(RunningHours other) {
    return tenths > other.tenths;
  }

  /** The hours as the nearest double. */
  public double hours() {
    return tenths / 10.0;
  }

  @Override
  public int compareTo(RunningHours other) {
    return Long.compare(tenths, other.tenths);
  }

  /** Plain decimal hours, without a trailing zero: {@code 8550} or {@code 8550.5}. */
  @Override
  public String toString() {
    return tenths % 10 == 0
        ? Long.toString(tenths / 10)
        : BigDecimal.valueOf(tenths, 1).toPlainString();
  }
}
