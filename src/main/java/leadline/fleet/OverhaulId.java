package leadline.fleet;

import java.io.Serializable;

/** An overhaul record, by the vessel's own numbering. */
public record OverhaulId(String vessel, String overhaul) implements Serializable {

  @Override
  public String toString() {
    return vessel + "/" + overhaul;
  }
}
