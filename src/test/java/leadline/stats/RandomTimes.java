package leadline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Observed times with many ties, causes that compete, censoring and, if asked for, late entry. */
final class RandomTimes {

  enum Cause {
    PLANNED,
    CONDITION,
    BREAKDOWN
  }

  private RandomTimes() {}

  static List<ObservedTime<Cause>> watchedFromStart(Random random) {
    List<ObservedTime<Cause>> times = new ArrayList<>();
    int count = 1 + random.nextInt(60);
    for (int index = 0; index < count; index++) {
      double time = tenths(random);
      times.add(
          random.nextInt(3) == 0
              ? ObservedTime.censored(time)
              : ObservedTime.ended(time, Cause.values()[random.nextInt(3)]));
    }
    return times;
  }

  static List<ObservedTime<Cause>> someWithDelayedEntry(Random random) {
    return watchedFromStart(random).stream()
        .map(
            observed -> {
              double entry = tenths(random);
              return entry < observed.time() ? observed.enteredAt(entry) : observed;
            })
        .toList();
  }

  static SurvivalTally<Cause> tally(List<ObservedTime<Cause>> times) {
    SurvivalTally<Cause> tally = new SurvivalTally<>();
    times.forEach(observed -> tally.add(observed, 1));
    return tally;
  }

  private static double tenths(Random random) {
    return random.nextInt(200) / 10.0;
  }
}
