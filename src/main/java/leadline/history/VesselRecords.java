package leadline.history;

import java.util.List;
import leadline.fleet.Finding;
import leadline.fleet.MachineEntry;
import leadline.fleet.Overhaul;
import leadline.fleet.Reading;

/** The current records of one vessel, in any order. */
public record VesselRecords(
    String vessel,
    List<MachineEntry> machines,
    List<Reading> readings,
    List<Overhaul> overhauls,
    List<Finding> findings) {}
