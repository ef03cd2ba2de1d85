package leadline.sample;

import java.util.List;
import leadline.fleet.Finding;
import leadline.fleet.MachineEntry;
import leadline.fleet.Overhaul;
import leadline.fleet.Reading;

/** What a reader of one vessel's files would take in, each record once. */
public record SampleRecords(
    String vessel,
    List<MachineEntry> machines,
    List<Reading> readings,
    List<Overhaul> overhauls,
    List<Finding> findings) {}
