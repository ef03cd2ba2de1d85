package leadline.fleet;

import java.io.Serializable;
import java.time.Instant;
import java.time.LocalDate;
import leadline.quantity.RunningHours;

/**
 * What a column's cells hold.
 *
 * @param <T> the value's type; always comparable and immutable
 */
public sealed interface CellType<T> extends Serializable {

  /** A short name by which records refer to each other: no blank at either end. */
  record Identifier() implements CellType<String> {}

  /** The ship's own words. */
  record Text() implements CellType<String> {}

  /** A whole number within a range, both ends included. */
  record Whole(long least, long most) implements CellType<Long> {}

  /** A decimal number within a range, both ends included. */
  record Decimal(double least, double most) implements CellType<Double> {}

  /** Running hours, rounded to a tenth, from zero to {@code most}. */
  record Hours(RunningHours most) implements CellType<RunningHours> {}

  /** A calendar date, from {@code earliest} to the day of the intake. */
  record Day(LocalDate earliest) implements CellType<LocalDate> {}

  /** A moment, or a date that stands for its end, from {@code earliest} to the intake. */
  record Moment(LocalDate earliest) implements CellType<Instant> {}

  /** One of a closed set of words. */
  record Word<E extends Enum<E> & Written>(Class<E> words) implements CellType<E> {}

  /** The name of a component in the catalogue. */
  record ComponentName() implements CellType<String> {}

  /** The name of a part of some component in the catalogue. */
  record PartName() implements CellType<String> {}
}
