package leadline.sample;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leadline.fleet.Cells;
import leadline.fleet.Component;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineLayout;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.origin.FileDigest;
import leadline.origin.Origin;

/**
 * An invented fleet. The same plan and seed give the same vessels, to the digit, wherever and
 * whenever they are made; a vessel depends on its number and on no other vessel.
 */
public final class SampleFleet {

  /** The register's row is read while its file is not there yet. */
  private static final Origin UNWRITTEN = new Origin("machines.csv", FileDigest.of(new byte[0]), 1);

  private final FleetPlan plan;
  private final Draw draw;

  public SampleFleet(FleetPlan plan, long seed) {
    this.plan = plan;
    this.draw = Draw.of(seed);
  }

  /**
   * One of the vessels.
   *
   * @param number from 1
   */
  public SampleVessel vessel(int number) {
    return new Building(number).vessel();
  }

  /** A vessel while it is being made. */
  private final class Building {
    private final Draw its;
    private final VesselCharacter character;
    private final ErrorList errors;
    private final List<SampleRow> machines = new ArrayList<>();
    private final List<SampleRow> hours = new ArrayList<>();
    private final List<Logged> overhauls = new ArrayList<>();
    private final List<TrueLife> lives = new ArrayList<>();

    private record Logged(TrueOverhaul overhaul, Counter counter) {}

    Building(int number) {
      its = draw.branch("vessel", number);
      character = VesselCharacter.drawn(plan, VesselName.of(number, draw), its.branch("character"));
      errors = new ErrorList(character.vessel());
      if (its.branch("separator").chance(plan.errors().of(RecordError.SEPARATOR_FAULT))) {
        errors.add(RecordError.SEPARATOR_FAULT, "all", "", "");
      }
    }

    SampleVessel vessel() {
      MachineDesign.ofVessel(character.engineType(), its.branch("machines")).forEach(this::add);
      OverhaulLog log = new OverhaulLog(character, plan, errors, its.branch("overhaul log"));
      overhauls.stream()
          .sorted(Comparator.comparing(logged -> logged.overhaul().day()))
          .forEach(logged -> log.write(logged.overhaul(), logged.counter()));
      Map<RecordKind, List<SampleRow>> rows = new EnumMap<>(RecordKind.class);
      rows.put(RecordKind.MACHINES, machines);
      rows.put(RecordKind.HOURS, hours);
      rows.put(RecordKind.OVERHAULS, log.overhauls());
      rows.put(RecordKind.FINDINGS, log.findings());
      rows.put(RecordKind.MOVEMENTS, log.movements());
      return new SampleVessel(character, rows, lives, errors.errors());
    }

    private void add(MachineDesign design) {
      List<Component> carried =
          plan.catalogue().components().stream()
              .filter(component -> component.machineKinds().contains(design.kind()))
              .toList();
      if (carried.isEmpty()) {
        return;
      }
      Draw machineDraw = its.branch(design.name());
      SailingMachine machine =
          SailingMachine.of(character, design, plan, machineDraw.branch("days"));
      Counter counter = new Counters(plan, errors).counter(machine, machineDraw.branch("counter"));
      MachineEntry entry = register(machine, counter);
      hours.addAll(HourLog.rows(plan, machine, counter, errors, machineDraw.branch("hour log")));
      for (Component component : carried) {
        ComponentWorld.Story story =
            ComponentWorld.of(
                component, entry, machine, plan, machineDraw.branch(component.name()));
        story.overhauls().forEach(overhaul -> overhauls.add(new Logged(overhaul, counter)));
        lives.addAll(story.lives());
      }
    }

    private MachineEntry register(SailingMachine machine, Counter counter) {
      MachineDesign design = machine.design();
      Cells.Builder cells =
          Cells.of(RecordKind.MACHINES)
              .with(MachineLayout.VESSEL, character.vessel())
              .with(MachineLayout.VESSEL_NAME, character.name())
              .with(MachineLayout.MACHINE, design.name())
              .with(MachineLayout.KIND, design.kind())
              .with(MachineLayout.MODEL, design.model())
              .with(MachineLayout.CYLINDERS, (long) design.cylinders())
              .with(MachineLayout.PLACES_PER_CYLINDER, (long) design.placesPerCylinder())
              .with(MachineLayout.COUNTER_DIGITS, (long) counter.digits());
      character.inServiceOn().ifPresent(day -> cells.with(MachineLayout.IN_SERVICE_ON, day));
      character.recordsFrom().ifPresent(day -> cells.with(MachineLayout.RECORDS_FROM, day));
      SampleRow row = SampleRow.of(cells.build());
      machines.add(row);
      return MachineEntry.of(new SourcedRow(row.cells(), UNWRITTEN));
    }
  }
}
