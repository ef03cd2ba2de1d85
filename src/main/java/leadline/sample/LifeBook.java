package leadline.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leadline.fleet.Component;
import leadline.fleet.MachineId;
import leadline.quantity.RunningHours;
import leadline.sample.TrueLife.End;

/** Enters the true lives of one component's parts, from the first day on record. */
final class LifeBook {

  private final MachineId machine;
  private final Component component;
  private final LocalDate worldBegan;
  private final int firstDay;
  private final List<TrueLife> lives = new ArrayList<>();

  LifeBook(MachineId machine, Component component, LocalDate worldBegan, int firstDay) {
    this.machine = machine;
    this.component = component;
    this.worldBegan = worldBegan;
    this.firstDay = firstDay;
  }

  List<TrueLife> lives() {
    return lives;
  }

  /** A part left its item. */
  void end(Item item, int index, String position, int day, End end) {
    if (day >= firstDay) {
      enter(item, index, position, end);
      item.countLife(index);
    }
  }

  /** The time of the records is over. */
  void close(Item item, String position, End end) {
    for (int index = 0; index < item.size(); index++) {
      enter(item, index, position, end);
    }
  }

  private void enter(Item item, int index, String position, End end) {
    Piece piece = item.piece(index);
    lives.add(
        new TrueLife(
            machine,
            component.name(),
            position,
            item.label(),
            piece.part().name(),
            item.life(index),
            worldBegan.plusDays(piece.bornDay()),
            RunningHours.ofTenths(piece.age()),
            piece.failure(),
            end));
  }
}
