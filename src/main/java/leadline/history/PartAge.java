package leadline.history;

import java.util.Optional;
import leadline.quantity.RunningHours;

/**
 * The age of one piece of a part, which may come to be known only after it was first seen: what a
 * ship states of it later dates what was seen of it before.
 */
final class PartAge {

  private Optional<RunningHours> newAt;

  /**
   * @param newAt the moment on the item's clock at which the piece was new; none while not known
   */
  PartAge(Optional<RunningHours> newAt) {
    this.newAt = newAt;
  }

  boolean isKnown() {
    return newAt.isPresent();
  }

  void learn(RunningHours age, RunningHours now) {
    newAt = Optional.of(now.minus(age));
  }

  /** Hours since new at a moment; none where not known, or where the piece came only later. */
  Optional<RunningHours> at(RunningHours moment) {
    return newAt.map(moment::minus).filter(age -> !age.isNegative());
  }
}
