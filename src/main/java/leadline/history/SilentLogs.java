package leadline.history;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Reading;
import leadline.history.SilenceProblem.MachineNeverRead;
import leadline.history.SilenceProblem.MachineSilent;
import leadline.history.SilenceProblem.VesselSilent;
import leadline.quantity.Days;

/**
 * Asks why hours are no longer sent. A machine is silent when its last reading lies back more than
 * three times the median of the last 24 intervals between its readings, and more than 14 days; with
 * fewer than three intervals, more than 92 days. So it is where it was never read, while the log of
 * another of the vessel goes on for more than 92 days. Common practice, no source.
 */
final class SilentLogs {

  private static final int RHYTHMS = 3;
  private static final int INTERVALS = 24;
  private static final int LEAST_INTERVALS = 3;
  private static final Duration SHORTEST = Duration.ofDays(14);
  private static final Duration UNKNOWN_RHYTHM = Duration.ofDays(92);

  private final Instant asOf;
  private final Map<MachineId, List<Reading>> readings;

  private SilentLogs(List<Reading> readings, Instant asOf, Instant knownAt) {
    this.asOf = asOf;
    this.readings =
        readings.stream()
            .filter(reading -> !reading.at().isAfter(knownAt))
            .sorted(Comparator.comparing(Reading::at))
            .collect(Collectors.groupingBy(Reading::machine));
  }

  /**
   * @param catalogue a machine that carries none of its components needs no hours to begin with
   * @param asOf when the silence is judged
   * @param knownAt a reading dated later is an error, and no sign of life
   */
  static List<SilenceProblem> among(
      VesselRecords records, Catalogue catalogue, Instant asOf, Instant knownAt) {
    SilentLogs logs = new SilentLogs(records.readings(), asOf, knownAt);
    List<MachineEntry> machines =
        records.machines().stream()
            .filter(machine -> isInFleet(machine, asOf))
            .sorted(Comparator.comparing(machine -> machine.id().machine()))
            .toList();
    List<MachineId> heard =
        machines.stream().map(MachineEntry::id).filter(logs.readings::containsKey).toList();
    List<MachineSilent> silent =
        heard.stream().map(logs::silence).flatMap(Optional::stream).toList();
    boolean isWholeVessel = !silent.isEmpty() && silent.size() == heard.size();
    List<SilenceProblem> problems =
        new ArrayList<>(isWholeVessel ? List.of(ofVessel(records.vessel(), silent)) : silent);
    machines.stream()
        .filter(machine -> !heard.contains(machine.id()))
        .filter(machine -> catalogue.components().stream().anyMatch(machine::carries))
        .flatMap(machine -> logs.neverRead(machine, heard).stream())
        .forEach(problems::add);
    return problems;
  }

  static boolean isInFleet(MachineEntry machine, Instant at) {
    return machine.validTo().map(Days::endOf).filter(end -> !end.isAfter(at)).isEmpty();
  }

  /** The vessel is as silent as the machine that was due last. */
  private static VesselSilent ofVessel(String vessel, List<MachineSilent> machines) {
    MachineSilent last =
        machines.stream()
            .max(Comparator.comparing(machine -> machine.last().plus(machine.limit())))
            .orElseThrow();
    return new VesselSilent(vessel, last.last(), last.limit(), last.origin());
  }

  private Optional<MachineSilent> silence(MachineId machine) {
    List<Reading> log = readings.getOrDefault(machine, List.of());
    Reading last = log.get(log.size() - 1);
    Duration limit = limit(log);
    return last.at().plus(limit).isBefore(asOf)
        ? Optional.of(new MachineSilent(machine, last.at(), limit, last.origin()))
        : Optional.empty();
  }

  /** Counted from the first reading of the others, or from the machine's own first day if later. */
  private Optional<MachineNeverRead> neverRead(MachineEntry machine, List<MachineId> heard) {
    List<Instant> others =
        heard.stream()
            .flatMap(other -> readings.getOrDefault(other, List.of()).stream())
            .map(Reading::at)
            .filter(at -> !at.isAfter(asOf))
            .sorted()
            .toList();
    if (others.isEmpty()) {
      return Optional.empty();
    }
    Instant since =
        Stream.concat(machine.atFirst().validFrom().stream(), machine.newOn().stream())
            .map(Days::startOf)
            .reduce(others.get(0), (one, other) -> one.isAfter(other) ? one : other);
    Instant due = since.plus(UNKNOWN_RHYTHM);
    Instant last = others.get(others.size() - 1);
    return due.isBefore(last)
        ? Optional.of(new MachineNeverRead(machine.id(), since, last, due, machine.origin()))
        : Optional.empty();
  }

  private static Duration limit(List<Reading> log) {
    List<Instant> moments = log.stream().map(Reading::at).distinct().toList();
    int first = Math.max(1, moments.size() - INTERVALS);
    List<Duration> intervals =
        IntStream.range(first, moments.size())
            .mapToObj(i -> Duration.between(moments.get(i - 1), moments.get(i)))
            .sorted()
            .toList();
    if (intervals.size() < LEAST_INTERVALS) {
      return UNKNOWN_RHYTHM;
    }
    Duration limit = intervals.get(intervals.size() / 2).multipliedBy(RHYTHMS);
    return limit.compareTo(SHORTEST) < 0 ? SHORTEST : limit;
  }
}
