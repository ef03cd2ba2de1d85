package leadline.sample;

import java.util.Set;

/**
 * How a part lives, fails and is reached.
 *
 * @param shape of its Weibull distribution
 * @param scale characteristic life, running hours
 * @param revealed chance that a failure shows in service, where the part may fail unseen
 */
public record PartModel(
    double shape, double scale, double revealed, Access access, Set<Change> changes) {

  public PartModel {
    changes = Set.copyOf(changes);
  }

  /** Whether an overhaul lays the part bare anyway, or the ship may leave it shut. */
  public enum Access {
    DISMANTLED,
    BY_HABIT
  }

  /** The dated changes that touch the part. */
  public enum Change {
    FUEL,
    NOZZLE_TYPE
  }

  PartModel longerLived(double factor) {
    return new PartModel(shape, scale * factor, revealed, access, changes);
  }
}
