package leadline.stats;

import java.util.ArrayList;
import java.util.List;

/** Months to breast retraction after two treatments. Source: Finkelstein and Wolfe 1985. */
final class BreastRetraction {

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static final double[] RADIOTHERAPY = {
    0, 5, 0, 7, 0, 8, 4, 11, 5, 11, 5, 12, 6, 10, 7, 14, 7, 16, 11, 15, 11, 18, 15, NEVER, 17,
    NEVER, 17, 25, 17, 25, 18, NEVER, 19, 26, 19, 35, 22, NEVER, 24, NEVER, 24, NEVER, 25, 37, 26,
    40, 27, 34, 32, NEVER, 33, NEVER, 34, NEVER, 36, NEVER, 36, NEVER, 36, 44, 36, 48, 37, NEVER,
    37, NEVER, 37, NEVER, 37, 44, 38, NEVER, 40, NEVER, 45, NEVER, 46, NEVER, 46, NEVER, 46, NEVER,
    46, NEVER, 46, NEVER, 46, NEVER, 46, NEVER, 46, NEVER
  };

  private static final double[] WITH_CHEMOTHERAPY = {
    8, 12, 0, 5, 30, 34, 0, 22, 5, 8, 13, NEVER, 24, 31, 12, 20, 10, 17, 17, 27, 11, NEVER, 8, 21,
    17, 23, 33, 40, 4, 9, 24, 30, 31, NEVER, 11, NEVER, 16, 24, 13, 39, 14, 19, 13, NEVER, 19, 32,
    4, 8, 11, 13, 34, NEVER, 34, NEVER, 16, 20, 13, NEVER, 30, 36, 18, 25, 16, 24, 18, 24, 17, 26,
    35, NEVER, 16, 60, 32, NEVER, 15, 22, 35, 39, 23, NEVER, 11, 17, 21, NEVER, 44, 48, 22, 32, 11,
    20, 14, 17, 10, 35, 48, NEVER
  };

  private BreastRetraction() {}

  static List<ObservedInterval> afterRadiotherapy() {
    return pairs(RADIOTHERAPY);
  }

  static List<ObservedInterval> afterRadiotherapyAndChemotherapy() {
    return pairs(WITH_CHEMOTHERAPY);
  }

  private static List<ObservedInterval> pairs(double[] bounds) {
    List<ObservedInterval> durations = new ArrayList<>();
    for (int index = 0; index < bounds.length; index += 2) {
      durations.add(ObservedInterval.within(bounds[index], bounds[index + 1]));
    }
    return durations;
  }
}
