package leadline.fleet;

import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import leadline.quantity.RunningHours;

/**
 * A component that is overhauled as a whole.
 *
 * @param machineKinds the kinds of machine that carry it
 * @param policy the policy interval between overhauls
 * @param hourLimits of the maker and of class, in running hours
 * @param monthLimits of the maker and of class, by the calendar
 */
public record Component(
    String name,
    PositionsPer per,
    Set<String> machineKinds,
    OverhaulLimit<RunningHours> policy,
    List<OverhaulLimit<RunningHours>> hourLimits,
    List<OverhaulLimit<Integer>> monthLimits,
    List<Part> parts)
    implements Serializable {

  private static final String COMMON_PRACTICE = "common practice, no source";

  public Component {
    machineKinds = Set.copyOf(machineKinds);
    hourLimits = List.copyOf(hourLimits);
    monthLimits = List.copyOf(monthLimits);
    parts = List.copyOf(parts);
  }

  /** A component with an interval of common practice and no other limit. */
  public Component(
      String name,
      PositionsPer per,
      Set<String> machineKinds,
      RunningHours interval,
      List<Part> parts) {
    this(
        name,
        per,
        machineKinds,
        new OverhaulLimit<>(LimitBy.CATALOGUE, interval, COMMON_PRACTICE),
        List.of(),
        List.of(),
        parts);
  }

  /** The component with a policy interval that the settings give in place of the catalogue's. */
  public Component withInterval(RunningHours interval) {
    return new Component(
        name,
        per,
        machineKinds,
        new OverhaulLimit<>(LimitBy.SETTINGS, interval, "the job file"),
        hourLimits,
        monthLimits,
        parts);
  }

  /** The policy interval between overhauls. */
  public RunningHours interval() {
    return policy.length();
  }

  /** The limit in running hours that is reached first. */
  public OverhaulLimit<RunningHours> hourLimit() {
    return Stream.concat(Stream.of(policy), hourLimits.stream())
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** The limit by the calendar that is reached first. */
  public Optional<OverhaulLimit<Integer>> monthLimit() {
    return monthLimits.stream().min(Comparator.naturalOrder());
  }

  /** Half of the policy interval: by then hardly any is overhauled. */
  public RunningHours halfInterval() {
    return RunningHours.ofTenths(interval().tenths() / 2);
  }

  public Optional<Part> part(String name) {
    return parts.stream().filter(part -> part.name().equals(name)).findFirst();
  }
}
