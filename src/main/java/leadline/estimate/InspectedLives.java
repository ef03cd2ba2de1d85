package leadline.estimate;

import java.util.List;
import leadline.stats.ObservedInterval;

/** Lives known from their start, for methods that take any censoring but no delayed entry. */
final class InspectedLives {

  private InspectedLives() {}

  static List<ObservedInterval> of(DataFile file) {
    return LifeRow.of(file).stream().map(InspectedLives::interval).toList();
  }

  private static ObservedInterval interval(LifeRow life) {
    if (life.entry().isPresent()) {
      throw life.row().impossible("entry", "this method takes lives known from their start only");
    }
    return new ObservedInterval(life.lower(), life.upper(), life.weight());
  }
}
