package leadline.fleet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.origin.Origin;

/**
 * A machine of the register, as its last row has it.
 *
 * @param formerly the machine as rows of earlier periods have it, such as before it was re-rated;
 *     in time, each valid to the day before the next begins
 */
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
    List<MachineEntry> formerly,
    Origin origin) {

  public MachineEntry {
    formerly = List.copyOf(formerly);
  }

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
        List.of(),
        row.origin());
  }

  /** The machine as its first row has it. */
  public MachineEntry atFirst() {
    return formerly.isEmpty() ? this : formerly.get(0);
  }

  /** The day it was new, by the latest row that says so. */
  public Optional<LocalDate> newOn() {
    return Stream.concat(formerly.stream(), Stream.of(this))
        .flatMap(entry -> entry.inServiceOn().stream())
        .reduce((earlier, later) -> later);
  }

  /** The same, on the register no longer than that day. */
  public MachineEntry until(LocalDate lastDay) {
    return with(id, validTo.filter(lastDay::isAfter).or(() -> Optional.of(lastDay)), formerly);
  }

  /** The same, with what earlier rows have of it. */
  public MachineEntry since(List<MachineEntry> earlier) {
    return with(id, validTo, earlier);
  }

  public MachineEntry withId(MachineId other) {
    return with(other, validTo, formerly);
  }

  private MachineEntry with(
      MachineId itsId, Optional<LocalDate> lastDay, List<MachineEntry> earlier) {
    return new MachineEntry(
        itsId,
        kind,
        model,
        cylinders,
        placesPerCylinder,
        counterDigits,
        inServiceOn,
        validFrom,
        lastDay,
        recordsFrom,
        earlier,
        origin);
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
