package leadline.stats;

import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Units with recurrent events, observed for different times. */
final class RandomHistories {

  private RandomHistories() {}

  static EventHistory unit(Random random, double start, double end) {
    double[] events =
        random.doubles(random.nextInt(8), start, end).map(time -> end - (time - start)).toArray();
    return new EventHistory(start, end, DoubleStream.of(events).boxed().toList());
  }

  static List<EventHistory> units(Random random, int count) {
    return IntStream.range(0, count)
        .mapToObj(unit -> unit(random, 0, 1000 + random.nextInt(9000)))
        .toList();
  }

  /** The same with time in another unit. */
  static EventHistory scaled(EventHistory unit, double factor) {
    return new EventHistory(
        unit.start() * factor,
        unit.end() * factor,
        unit.events().stream().map(event -> event * factor).toList());
  }
}
