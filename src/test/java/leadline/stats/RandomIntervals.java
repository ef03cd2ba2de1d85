package leadline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Durations confined to intervals by inspections on a grid, some seen to end, some going on. */
final class RandomIntervals {

  private RandomIntervals() {}

  static List<ObservedInterval> mixed(Random random) {
    List<ObservedInterval> durations = new ArrayList<>();
    int count = 1 + random.nextInt(60);
    for (int index = 0; index < count; index++) {
      double lower = random.nextInt(20);
      double upper = lower + 1 + random.nextInt(12);
      durations.add(
          switch (random.nextInt(5)) {
            case 0 -> ObservedInterval.at(upper);
            case 1 -> ObservedInterval.beyond(lower);
            case 2 -> ObservedInterval.within(0, upper);
            default -> ObservedInterval.within(lower, upper);
          });
    }
    return durations;
  }

  /** Each inspected once. */
  static List<ObservedInterval> currentStatus(Random random) {
    List<ObservedInterval> durations = new ArrayList<>();
    for (int index = 0; index < 5 + random.nextInt(80); index++) {
      double age = 1 + random.nextInt(15);
      boolean failed = random.nextInt(20) < age;
      durations.add(failed ? ObservedInterval.within(0, age) : ObservedInterval.beyond(age));
    }
    return durations;
  }

  static List<ObservedInterval> of(List<ObservedTime<RandomTimes.Cause>> times) {
    return times.stream()
        .map(
            time ->
                time instanceof ObservedTime.Censored<RandomTimes.Cause>
                    ? ObservedInterval.beyond(time.time())
                    : ObservedInterval.at(time.time()))
        .toList();
  }
}
