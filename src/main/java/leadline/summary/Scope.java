package leadline.summary;

import java.io.Serializable;
import java.util.List;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.MachineEntry;
import leadline.quantity.ReportMonth;

/** Which components a summary reports, and for which month. */
record Scope(Catalogue catalogue, ReportMonth month) implements Serializable {

  /** The components that the machine carries, in the catalogue's order. */
  List<Component> carriedBy(MachineEntry machine) {
    return catalogue.components().stream().filter(machine::carries).toList();
  }
}
