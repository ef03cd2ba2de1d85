package leadline.fleet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.origin.Origin;

/** A machine of the register. */
public record MachineEntry(
    MachineId id,
    String kind,
    String model,
    int cylinders,
    int placesPerCylinder,
    Optional<Integer> counterDigits,
    Optional<LocalDate> inServiceOn,
    Optional<LocalDate> validFrom,
    Optional<LocalDate> validTo,
    Optional<LocalDate> recordsFrom,
    Origin origin) {

  public static MachineEntry of(SourcedRow row) {
    Cells cells = row.cells();
    return new MachineEntry(
        new MachineId(cells.need(MachineLayout.VESSEL), cells.need(MachineLayout.MACHINE)),
        cells.need(MachineLayout.KIND),
        cells.need(MachineLayout.MODEL),
        cells.find(MachineLayout.CYLINDERS).orElse(0L).intValue(),
        cells.find(MachineLayout.PLACES_PER_CYLINDER).orElse(1L).intValue(),
        cells.find(MachineLayout.COUNTER_DIGITS).map(Long::intValue),
        cells.find(MachineLayout.IN_SERVICE_ON),
        cells.find(MachineLayout.VALID_FROM),
        cells.find(MachineLayout.VALID_TO),
        cells.find(MachineLayout.RECORDS_FROM),
        row.origin());
  }

  public boolean carries(Component component) {
    return component.machineKinds().contains(kind);
  }

  /** How many positions of the component the machine has; none where it does not carry it. */
  public int positionCount(Component component) {
    if (!carries(component)) {
      return 0;
    }
    return switch (component.per()) {
      case PLACE -> cylinders * placesPerCylinder;
      case UNIT -> cylinders;
      case MACHINE -> 1;
    };
  }

  /** Every position of the component, by unit and place. */
  public List<Position> positions(Component component) {
    List<Position> positions = new ArrayList<>();
    if (!carries(component)) {
      return positions;
    }
    if (component.per() == PositionsPer.MACHINE) {
      positions.add(new Position(id, component.name(), 0, 0));
      return positions;
    }
    for (int unit = 1; unit <= cylinders; unit++) {
      if (component.per() == PositionsPer.UNIT) {
        positions.add(new Position(id, component.name(), unit, 0));
      } else {
        for (int place = 1; place <= placesPerCylinder; place++) {
          positions.add(new Position(id, component.name(), unit, place));
        }
      }
    }
    return positions;
  }
}
