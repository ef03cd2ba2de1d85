package leadline.fleet;

import java.io.Serializable;

/** A machine with one running-hours counter, on its vessel. */
public record MachineId(String vessel, String machine) implements Serializable {

  @Override
  public String toString() {
    return vessel + "/" + machine;
  }
}
