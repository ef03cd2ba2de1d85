package leadline.estimate;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import leadline.stats.Life;
import leadline.stats.LifeData;

/**
 * A life known to have ended after {@code lower} and not after {@code upper}, in the file's unit.
 *
 * @param row where it stands
 * @param lower finite, 0 or more; equal to {@code upper} where the end is known exactly
 * @param upper positive infinity where the end is beyond {@code lower} and not known
 *     (right-censored)
 * @param entry the age beyond which it must have lived to be known of, less than {@code upper};
 *     empty where it was known from the start
 * @param weight how many lives are alike, finite and more than 0
 */
record LifeRow(DataRow row, double lower, double upper, OptionalDouble entry, double weight) {

  private static final Set<String> COLUMNS = Set.of("lower", "upper", "entry", "weight");

  static List<LifeRow> of(DataFile file) {
    return of(file, Set.of());
  }

  /** Of a file that may have these columns too. */
  static List<LifeRow> of(DataFile file, Set<String> optional) {
    file.header().require(COLUMNS, optional);
    return file.rows().stream().map(LifeRow::of).toList();
  }

  /** The lives of all rows together, for a distribution to be fitted to. */
  static LifeData lives(DataFile file) {
    LifeData.Builder builder = new LifeData.Builder();
    of(file).forEach(row -> builder.add(row.life(), row.weight()));
    return builder.build();
  }

  private static LifeRow of(DataRow row) {
    double lower = row.notNegative("lower");
    double upper = row.states("upper") ? row.notNegative("upper") : Double.POSITIVE_INFINITY;
    if (upper < lower) {
      throw row.impossible("upper", "less than lower: " + row.word("upper"));
    }
    double entry = row.states("entry") ? row.notNegative("entry") : 0;
    LifeRow life =
        new LifeRow(
            row,
            lower,
            upper,
            entry == 0 ? OptionalDouble.empty() : OptionalDouble.of(entry),
            row.positive("weight"));
    if (entry > 0 && entry >= life.lastSeen()) {
      throw row.impossible("entry", "not before the end of the life: " + row.word("entry"));
    }
    return life;
  }

  /** For a life distribution, in which nothing ends at age 0. */
  Life life() {
    if (upper == 0) {
      throw row.impossible("upper", "no life distribution has an end at age 0");
    }
    Life life =
        isRightCensored()
            ? Life.outlived(lower)
            : isExact() ? Life.failedAt(lower) : Life.failedBetween(lower, upper);
    return entry.isPresent() ? life.enteredAt(entry.getAsDouble()) : life;
  }

  boolean isExact() {
    return lower == upper;
  }

  boolean isRightCensored() {
    return upper == Double.POSITIVE_INFINITY;
  }

  /** The last age of which something is known. */
  private double lastSeen() {
    return isRightCensored() ? lower : upper;
  }
}
