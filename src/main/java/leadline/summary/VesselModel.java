package leadline.summary;

import java.io.Serializable;
import java.util.Comparator;
import leadline.fleet.MachineEntry;

/** The machines of one model on one vessel: every stratum is made up of such groups. */
record VesselModel(String vessel, String model) implements Comparable<VesselModel>, Serializable {

  private static final Comparator<VesselModel> ORDER =
      Comparator.comparing(VesselModel::vessel).thenComparing(VesselModel::model);

  static VesselModel of(MachineEntry machine) {
    return new VesselModel(machine.id().vessel(), machine.model());
  }

  @Override
  public int compareTo(VesselModel other) {
    return ORDER.compare(this, other);
  }
}
