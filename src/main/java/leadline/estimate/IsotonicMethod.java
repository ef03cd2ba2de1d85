package leadline.estimate;

import java.util.List;
import leadline.stats.CurrentStatus;
import leadline.stats.ObservedInterval;

/** The share failed by each age, of lives inspected once each. */
final class IsotonicMethod implements Method {

  @Override
  public String word() {
    return "isotonic";
  }

  @Override
  public List<String> prints() {
    return List.of("isotonic.");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight[,group]; left or right";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<ObservedInterval> lives = InspectedLives.of(file);
    for (LifeRow life : LifeRow.of(file)) {
      if (!life.isRightCensored() && (life.isExact() || life.lower() > 0)) {
        throw life.row().impossible("lower", "this method takes lives inspected once only");
      }
    }
    List<CurrentStatus.Point> points = CurrentStatus.points(lives);
    return new EstimateResults()
        .numbers("isotonic.age", points, CurrentStatus.Point::age)
        .numbers("isotonic.inspected", points, CurrentStatus.Point::inspected)
        .numbers("isotonic.failed", points, CurrentStatus.Point::failed)
        .numbers("isotonic.failed_by", points, CurrentStatus.Point::failedBy);
  }
}
