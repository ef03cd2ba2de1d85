package leadline.fleet;

import java.io.Serializable;

/**
 * Where an item sits.
 *
 * @param unit the cylinder, from 1; 0 where the component is one per machine
 * @param place which of the unit's valves, from 1; 0 where the component is one per unit
 */
public record Position(MachineId machine, String component, int unit, int place)
    implements Serializable {

  /** The position on its machine: {@code @3/2}, {@code @3} for one a unit, {@code @} for one. */
  public String label() {
    return "@" + (unit > 0 ? unit : "") + (place > 0 ? "/" + place : "");
  }

  @Override
  public String toString() {
    return machine
        + " "
        + component
        + (unit > 0 ? " " + unit : "")
        + (place > 0 ? "/" + place : "");
  }
}
