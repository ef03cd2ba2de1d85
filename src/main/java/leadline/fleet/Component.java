package leadline.fleet;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.quantity.RunningHours;

/**
 * A component that is overhauled as a whole.
 *
 * @param machineKinds the kinds of machine that carry it
 * @param interval the policy interval between overhauls
 */
public record Component(
    String name,
    PositionsPer per,
    Set<String> machineKinds,
    RunningHours interval,
    List<Part> parts)
    implements Serializable {

  public Component {
    machineKinds = Set.copyOf(machineKinds);
    parts = List.copyOf(parts);
  }

  /** Half of the policy interval: by then hardly any is overhauled. */
  public RunningHours halfInterval() {
    return RunningHours.ofTenths(interval.tenths() / 2);
  }

  public Optional<Part> part(String name) {
    return parts.stream().filter(part -> part.name().equals(name)).findFirst();
  }
}
