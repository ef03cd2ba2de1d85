package leadline.summary;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How well a vessel reports: the worst of the grades of its ingredients. The steps are a convention
 * of this program, common practice, no source.
 */
enum DataGrade {
  A,
  B,
  C,
  D;

  static final String RULE =
      "A to D, the worst of four; A, B or C where days_since_reading is at most 7, 31, 92;"
          + " repaired_share at most 0.01, 0.05, 0.2; questions_per_100_overhauls at most 5, 20,"
          + " 50; opening_stated_share at least 0.95, 0.8, 0.5; else D; an empty one does not count,"
          + " but without a reading it is D (steps: common practice, no source)";

  static DataGrade of(
      Optional<Long> daysSinceReading,
      OptionalDouble repairedShare,
      OptionalDouble questionsPer100,
      OptionalDouble openingStatedShare) {
    return Stream.of(
            daysSinceReading.map(days -> atMost(days, 7, 31, 92)).orElse(D),
            repairedShare.isPresent() ? atMost(repairedShare.getAsDouble(), 0.01, 0.05, 0.2) : A,
            questionsPer100.isPresent() ? atMost(questionsPer100.getAsDouble(), 5, 20, 50) : A,
            openingStatedShare.isPresent()
                ? atMost(-openingStatedShare.getAsDouble(), -0.95, -0.8, -0.5)
                : A)
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static DataGrade atMost(double value, double a, double b, double c) {
    if (value <= a) {
      return A;
    }
    if (value <= b) {
      return B;
    }
    return value <= c ? C : D;
  }
}
