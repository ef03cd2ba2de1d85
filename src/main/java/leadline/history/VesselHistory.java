package leadline.history;

import java.util.List;

/** What the records of one vessel say happened, up to the cut-off. */
public record VesselHistory(String vessel, List<MachineHistory> machines) {}
