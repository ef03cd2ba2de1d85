package leadline.sample;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import leadline.fleet.MachineId;
import leadline.history.History;
import leadline.history.MachineHistory;
import leadline.history.PartLife;
import leadline.history.VesselHistory;
import leadline.history.VesselRecords;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/** A sample vessel's history as its records tell it, to the last day. */
record RebuiltVessel(SampleVessel vessel, Checked<VesselHistory, Problem> checked, Instant cutOff) {

  static RebuiltVessel of(FleetPlan plan, SampleVessel vessel) {
    return of(plan, vessel, records(vessel.records()));
  }

  static RebuiltVessel of(FleetPlan plan, SampleVessel vessel, VesselRecords records) {
    Instant cutOff = Days.endOf(plan.lastDay());
    return new RebuiltVessel(
        vessel,
        History.rebuild(records, plan.catalogue(), RunningHours.ofHours(24), cutOff),
        cutOff);
  }

  static VesselRecords records(SampleRecords records) {
    return new VesselRecords(
        records.vessel(),
        records.machines(),
        records.readings(),
        records.overhauls(),
        records.findings());
  }

  List<MachineHistory> machines() {
    return checked.value().machines();
  }

  Stream<PartLife> lives() {
    return machines().stream().flatMap(machine -> machine.lives().stream());
  }

  MachineHistory machine(MachineId id) {
    return machines().stream()
        .filter(machine -> machine.machine().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  RunningHours ran(MachineHistory machine) {
    return machine.exposureWithin(new Period(Instant.EPOCH, cutOff)).hours();
  }
}
