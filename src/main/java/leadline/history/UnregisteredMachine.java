package leadline.history;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Overhaul;
import leadline.fleet.Reading;
import leadline.origin.Origin;
import leadline.problem.Problem;

/**
 * Records of a machine that the register does not have. They count nowhere.
 *
 * @param origin the first of its records
 */
public record UnregisteredMachine(MachineId machine, long readings, long overhauls, Origin origin)
    implements Problem {

  private static final Comparator<Origin> FIRST =
      Comparator.comparing(Origin::digest).thenComparing(Origin::line);

  /** The machines that records up to the cut-off name and the register does not have. */
  static List<UnregisteredMachine> among(VesselRecords records, Instant cutOff) {
    Set<MachineId> registered =
        records.machines().stream().map(MachineEntry::id).collect(Collectors.toSet());
    Map<MachineId, List<Origin>> readings =
        records.readings().stream()
            .filter(reading -> !reading.at().isAfter(cutOff))
            .collect(originsBy(Reading::machine, Reading::origin));
    Map<MachineId, List<Origin>> overhauls =
        records.overhauls().stream()
            .filter(overhaul -> !overhaul.removedAt().isAfter(cutOff))
            .collect(originsBy(Overhaul::machine, Overhaul::origin));
    return Stream.concat(readings.keySet().stream(), overhauls.keySet().stream())
        .distinct()
        .filter(machine -> !registered.contains(machine))
        .map(
            machine ->
                of(
                    machine,
                    readings.getOrDefault(machine, List.of()),
                    overhauls.getOrDefault(machine, List.of())))
        .toList();
  }

  private static UnregisteredMachine of(
      MachineId machine, List<Origin> readings, List<Origin> overhauls) {
    return new UnregisteredMachine(
        machine,
        readings.size(),
        overhauls.size(),
        Stream.concat(readings.stream(), overhauls.stream()).min(FIRST).orElseThrow());
  }

  private static <T> Collector<T, ?, Map<MachineId, List<Origin>>> originsBy(
      Function<T, MachineId> machine, Function<T, Origin> origin) {
    return Collectors.groupingBy(machine, Collectors.mapping(origin, Collectors.toList()));
  }

  @Override
  public String vessel() {
    return machine.vessel();
  }

  @Override
  public String record() {
    return machine.machine();
  }

  @Override
  public String evidence() {
    return "The machine %s is not in the register; records that name it: readings %d, overhauls %d."
        .formatted(machine.machine(), readings, overhauls);
  }

  @Override
  public String request() {
    return "Send its row of machines, or the machine's right name.";
  }
}
