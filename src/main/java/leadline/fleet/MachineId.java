package leadline.fleet;

import java.io.Serializable;

/**
 * A machine with one running-hours counter, on its vessel.
 *
 * @param succession 1 for the first machine under the identifier, 2 for the one that replaced it
 */
public record MachineId(String vessel, String machine, int succession) implements Serializable {

  /** The first machine under the identifier; for most the only one. */
  public MachineId(String vessel, String machine) {
    this(vessel, machine, 1);
  }

  /** The machine that replaced it under the same identifier. */
  public MachineId successor() {
    return new MachineId(vessel, machine, succession + 1);
  }

  @Override
  public String toString() {
    return vessel + "/" + machine + (succession > 1 ? " (no. " + succession + ")" : "");
  }
}
