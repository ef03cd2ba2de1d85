package leadline.fleet;

import java.io.Serializable;

/** An individual component whose hours and parts are followed. */
public sealed interface Item extends Serializable {

  String component();

  /** The item as people name it. */
  String label();

  /**
   * An item known by its serial.
   *
   * @param pool the vessel, or the vessels that exchange items, within which the serial is one item
   */
  record Named(String pool, String component, String model, String serial) implements Item {
    @Override
    public String label() {
      return serial;
    }
  }

  /**
   * The item at a position, where the ship gives no serial: taken to be refitted at each overhaul
   * until a named item comes between.
   *
   * @param sequence 1 for the first such item at the position, 2 after a named one came between
   */
  record AtPosition(Position position, int sequence) implements Item {
    @Override
    public String component() {
      return position.component();
    }

    @Override
    public String label() {
      return position.label() + (sequence > 1 ? "#" + sequence : "");
    }
  }
}
