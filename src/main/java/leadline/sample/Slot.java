package leadline.sample;

import leadline.fleet.Position;

/** A position and the item fitted there. Moments are tenths turned by the machine. */
final class Slot {

  static final long NEVER = Long.MAX_VALUE;

  private final Position position;
  private final FuelChange fuelChange;
  private Item item;
  private long fittedAt;
  private long breaksDownAt;

  Slot(Position position, Item item, FuelChange fuelChange) {
    this.position = position;
    this.fuelChange = fuelChange;
    this.item = item;
    fit(item, 0);
  }

  Position position() {
    return position;
  }

  Item item() {
    return item;
  }

  long fittedAt() {
    return fittedAt;
  }

  /** When a failure will take the item out of service, if it stays so long. */
  long breaksDownAt() {
    return breaksDownAt;
  }

  /** Lets the item live to the moment. */
  Item remove(long at) {
    item.run(at - fittedAt, fuelChange.seenAt(fittedAt));
    return item;
  }

  void fit(Item next, long at) {
    item = next;
    fittedAt = at;
    breaksDownAt =
        next.tenthsToBreakdown(fuelChange.seenAt(at)).map(tenths -> at + tenths).orElse(NEVER);
  }
}
