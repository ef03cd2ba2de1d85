package leadline.history;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Component;
import leadline.quantity.RunningHours;

/**
 * An item in sight.
 *
 * @param since the clock when it came into sight
 * @param overhauledAt the clock at its last overhaul or when it was new; none where not known
 */
record Sighting(List<PartLedger> parts, RunningHours since, Optional<RunningHours> overhauledAt) {

  static Sighting begin(Component component, RunningHours now, Optional<RunningHours> age) {
    return new Sighting(
        component.parts().stream()
            .map(part -> PartLedger.firstSeen(part, component.halfInterval(), now, age))
            .toList(),
        now,
        age.map(now::minus));
  }

  Sighting overhauledAt(RunningHours now) {
    return new Sighting(parts, since, Optional.of(now));
  }

  Optional<RunningHours> sinceOverhaul(RunningHours now) {
    return overhauledAt.map(now::minus);
  }

  boolean hasRunSinceOverhaul(RunningHours now) {
    return now.isAbove(overhauledAt.orElse(since));
  }
}
