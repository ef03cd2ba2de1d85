package leadline.sample;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.stream.Stream;

/** The vessel's spare items, the longest there first. */
final class Shelf {

  private static final double SWAPPED = .8;

  private final Deque<Spare> spares = new ArrayDeque<>();
  private final Draw draw;

  /** Overhauled on that day, and to be had from the next. */
  private record Spare(Item item, int day) {}

  Shelf(Draw draw) {
    this.draw = draw;
  }

  void add(Item item, int day) {
    spares.add(new Spare(item, day));
  }

  /** A spare in exchange for the item removed, or that item itself. */
  Item exchange(Item removed, int day) {
    if (spares.isEmpty() || spares.getFirst().day() >= day || !draw.chance(SWAPPED)) {
      return removed;
    }
    Item spare = spares.removeFirst().item();
    add(removed, day);
    return spare;
  }

  Stream<Item> items() {
    return spares.stream().map(Spare::item);
  }
}
